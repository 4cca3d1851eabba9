# SPDX-License-Identifier: GPL-3.0-or-later
# The viewer's words and pages, carried inside the programs: translations/*.ts, made into .qm files, and the pages of docs/ that a
# user needs. Debian: qttools5-dev. Included after the folders' libraries are made.
#   cmake --build build --target translations_update    puts new texts of the sources into the .ts files

find_package(Qt5 5.15 REQUIRED COMPONENTS LinguistTools)

# seamward_carry(TARGET NAME PREFIX folder FILES file...): files as Qt resources :/seamward/PREFIX/file of a static library, called
# in by Q_INIT_RESOURCE(NAME).
function(seamward_carry target name)
  cmake_parse_arguments(PARSE_ARGV 2 CARRY "" "PREFIX" "FILES")
  set(list ${CMAKE_CURRENT_BINARY_DIR}/${name}.qrc)
  set(made ${CMAKE_CURRENT_BINARY_DIR}/qrc_${name}.cpp)
  set(text "<RCC><qresource prefix=\"/seamward/${CARRY_PREFIX}\">\n")
  foreach(file IN LISTS CARRY_FILES)
    get_filename_component(alias ${file} NAME)
    string(APPEND text "  <file alias=\"${alias}\">${file}</file>\n")
  endforeach()
  file(CONFIGURE OUTPUT ${list} CONTENT "${text}</qresource></RCC>\n" @ONLY)
  add_custom_command(OUTPUT ${made} COMMAND Qt5::rcc --name ${name} --output ${made} ${list}
    DEPENDS ${list} ${CARRY_FILES} VERBATIM)
  set_source_files_properties(${made} PROPERTIES SKIP_AUTOMOC ON)
  target_sources(${target} PRIVATE ${made})
endfunction()

set(translations translations/seamward_en.ts translations/seamward_es.ts)
qt5_add_translation(seamward_qm ${translations})
seamward_carry(seamward_viewer_document seamward_words PREFIX words FILES ${seamward_qm})

# Links between these pages work; links to others are shown as text.
set(pages catalog commands completion exports house-file job-file limits models plans prices quotes ranked-paths window)
list(TRANSFORM pages PREPEND ${PROJECT_SOURCE_DIR}/docs/)
list(TRANSFORM pages APPEND .md)
seamward_carry(seamward_viewer_panels seamward_pages PREFIX pages FILES ${pages})

add_custom_target(translations_update
  COMMAND ${CMAKE_COMMAND} -DSOURCES=${CMAKE_CURRENT_SOURCE_DIR} -DCOPY=${CMAKE_CURRENT_BINARY_DIR}/words
    -DLUPDATE=$<TARGET_FILE:Qt5::lupdate>
    -DENGLISH=${CMAKE_CURRENT_SOURCE_DIR}/translations/seamward_en.ts
    -DSPANISH=${CMAKE_CURRENT_SOURCE_DIR}/translations/seamward_es.ts -P ${CMAKE_CURRENT_SOURCE_DIR}/collect_words.cmake
  VERBATIM)
