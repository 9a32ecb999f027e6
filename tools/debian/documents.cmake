# Run by cpack before it packs: adds what Debian wants beside the program, and compresses what Debian wants compressed.
set(root ${CPACK_TEMPORARY_INSTALL_DIRECTORY}/usr)
set(documents ${root}/share/doc/entrywise)
file(COPY ${CMAKE_CURRENT_LIST_DIR}/copyright DESTINATION ${documents}
     FILE_PERMISSIONS OWNER_READ OWNER_WRITE GROUP_READ WORLD_READ)
file(COPY ${CMAKE_CURRENT_LIST_DIR}/changelog DESTINATION ${documents}
     FILE_PERMISSIONS OWNER_READ OWNER_WRITE GROUP_READ WORLD_READ)
# Where zsh looks on Debian for what packages bring along.
file(RENAME ${root}/share/zsh/site-functions ${root}/share/zsh/vendor-completions)
file(GLOB_RECURSE pages ${root}/share/man/*.1)
execute_process(COMMAND gzip -9 --no-name --force ${pages} ${documents}/changelog COMMAND_ERROR_IS_FATAL ANY)
