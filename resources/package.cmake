# The Debian package: cpack -G DEB --config build/release/CPackConfig.cmake, or app/package.sh. The triggers of
# shared-mime-info, desktop-file-utils and hicolor-icon-theme take in what is installed; no script of ours runs.
set(CPACK_PACKAGE_NAME rigband)
set(CPACK_PACKAGE_VENDOR "The Rigband contributors")
set(CPACK_PACKAGE_CONTACT "The Rigband contributors <rigband@example.org>")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "remembers the locked gap of each control coupling of a glider")
set(CPACK_PACKAGE_DESCRIPTION "Glider controls join at quick-release couplings, each fitted by hand and
each with its own normal gap. Readings by feeler leaf become each
coupling's own band, every later reading is judged against it at once, and
the history shows drift.
.
A band is a coupling's own past, never a limit. Manuals, directives, local
rules and persons entitled to decide prevail.
.
With it come rigband-file (check, import, export, printing and joining of
files) and rigband-calc (the computation alone, for scripts).")
set(CPACK_RESOURCE_FILE_LICENSE ${PROJECT_SOURCE_DIR}/LICENSE)
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_PACKAGE_DIRECTORY ${PROJECT_BINARY_DIR}/package)
set(CPACK_GENERATOR DEB)
set(CPACK_STRIP_FILES ON)
set(CPACK_INSTALL_DEFAULT_DIRECTORY_PERMISSIONS OWNER_READ OWNER_WRITE OWNER_EXECUTE GROUP_READ GROUP_EXECUTE
    WORLD_READ WORLD_EXECUTE)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION science)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON) # the file is read with SQLite itself, not by a plugin that it would not see
set(CPACK_DEBIAN_PACKAGE_DEPENDS "libsqlite3-0 (>= 3.37)") # STRICT tables, which no symbol tells of
set(CPACK_DEBIAN_PACKAGE_RECOMMENDS "shared-mime-info, desktop-file-utils, hicolor-icon-theme, qt6-translations-l10n")
set(CPACK_DEBIAN_PACKAGE_SUGGESTS "qt6-wayland")
set(CPACK_VERBATIM_VARIABLES ON)
include(CPack)
