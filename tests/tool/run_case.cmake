# SPDX-License-Identifier: GPL-3.0-or-later
# Runs one case of command_case() in CMakeLists.txt: cmake -DPROGRAM=... -DARGS=... -DEXIT=... -DOUT=... -DERR=... -P run_case.cmake

execute_process(COMMAND ${PROGRAM} ${ARGS} RESULT_VARIABLE exit OUTPUT_VARIABLE out ERROR_VARIABLE err)

function(check_stream name text pattern)
  if(pattern STREQUAL "" AND NOT text STREQUAL "")
    message(SEND_ERROR "standard ${name} must be empty")
  elseif(NOT text MATCHES "${pattern}")
    message(SEND_ERROR "standard ${name} does not match ${pattern}")
  endif()
endfunction()

if(NOT exit STREQUAL EXIT)
  message(SEND_ERROR "exit code ${exit}, not ${EXIT}")
endif()
check_stream(output "${out}" "${OUT}")
check_stream(error "${err}" "${ERR}")
message("standard output:\n${out}\nstandard error:\n${err}")
