# SPDX-License-Identifier: GPL-3.0-or-later
# cmake -DSOURCES=folder -DCOPY=folder -DLUPDATE=program -DENGLISH=file -DSPANISH=file -P collect_words.cmake
# Puts the texts of the sources into the .ts files: of English only what has a plural. lupdate reads a copy of the sources, because
# it stumbles over 10'000 and does not see through a file's own function that stands for translate("context", ...).

file(REMOVE_RECURSE ${COPY})
file(GLOB_RECURSE sources RELATIVE ${SOURCES} ${SOURCES}/*.cpp ${SOURCES}/*.h)
set(own "QString ([a-z_]+)\\(const char\\* ?[a-z]+[^)]*\\) {[^}]*translate\\(\"([a-z_]+)\", [a-z]+[^}]*}")
foreach(source IN LISTS sources)
  file(READ ${SOURCES}/${source} text)
  string(REGEX REPLACE "([0-9])'([0-9])" "\\1\\2" text "${text}")
  if(text MATCHES "${own}")
    set(name ${CMAKE_MATCH_1})
    set(context ${CMAKE_MATCH_2})
    string(REPLACE "${CMAKE_MATCH_0}" "" text "${text}")
    string(REGEX REPLACE "([^A-Za-z_:.>])${name}\\(" "\\1QCoreApplication::translate(\"${context}\", " text "${text}")
  endif()
  file(WRITE ${COPY}/${source} "${text}")
endforeach()

function(collect)
  execute_process(COMMAND ${LUPDATE} ${COPY} -recursive -locations none -no-obsolete -source-language en ${ARGN}
    RESULT_VARIABLE failed ERROR_VARIABLE said OUTPUT_VARIABLE told)
  message("${told}")
  if(failed OR NOT said STREQUAL "")
    message(FATAL_ERROR "${said}")
  endif()
endfunction()

collect(-pluralonly -target-language en -ts ${ENGLISH})
collect(-target-language es -ts ${SPANISH})
