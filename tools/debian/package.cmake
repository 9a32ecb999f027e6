# What `cpack -G DEB` makes a Debian package of; `tools/package` makes it and looks at it.
set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME entrywise)
set(CPACK_PACKAGE_VERSION ${PROJECT_VERSION})
set(CPACK_PACKAGE_CONTACT "Entrywise contributors <entrywise@example.org>")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "predicts how a judge would score a beer against a style")
set(CPACK_DEBIAN_PACKAGE_DESCRIPTION
"From the grain and hop bill of a beer entrywise works out gravities, alcohol,
bitterness and color, each with its uncertainty, and what a trained palate
senses of them. It holds that against the styles of competitions and predicts
the fifty-point score sheet: which sections lose points, why, what to change,
and where the beer would better be entered.
.
Styles and ingredient tables are built in; no network is used.")
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION misc)
set(CPACK_DEBIAN_PACKAGE_PRIORITY optional)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
set(CPACK_DEBIAN_COMPRESSION_TYPE xz)
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_STRIP_FILES ON)
set(CPACK_INSTALL_DEFAULT_DIRECTORY_PERMISSIONS OWNER_READ OWNER_WRITE OWNER_EXECUTE GROUP_READ GROUP_EXECUTE WORLD_READ
    WORLD_EXECUTE)
set(CPACK_PRE_BUILD_SCRIPTS ${CMAKE_CURRENT_LIST_DIR}/documents.cmake)
include(CPack)
