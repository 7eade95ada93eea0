# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0

# Where everything goes on a Linux system: cmake --install BUILD --prefix /usr. The QML modules, fonts and the demo
# are inside the program; its two libraries are looked for in ../lib/lapwing of it (platform/api/part.h).
include(GNUInstallDirs)

install(TARGETS lapwing lapwing-cli RUNTIME DESTINATION ${CMAKE_INSTALL_BINDIR})
install(TARGETS lapwing_media lapwing_photo_eye LIBRARY DESTINATION lib/lapwing)

set(share ${PROJECT_SOURCE_DIR}/platform/linux/share)
install(FILES ${share}/lapwing.desktop DESTINATION ${CMAKE_INSTALL_DATADIR}/applications)
install(FILES ${share}/org.lapwing.Lapwing.metainfo.xml DESTINATION ${CMAKE_INSTALL_DATADIR}/metainfo)
install(FILES ${share}/lapwing.xml DESTINATION ${CMAKE_INSTALL_DATADIR}/mime/packages)
install(FILES ${PROJECT_SOURCE_DIR}/platform/linux/lapwing.1 ${PROJECT_SOURCE_DIR}/platform/linux/lapwing-cli.1
  DESTINATION ${CMAKE_INSTALL_MANDIR}/man1)

set(icons ${PROJECT_SOURCE_DIR}/assets/icons)
install(DIRECTORY ${icons}/hicolor DESTINATION ${CMAKE_INSTALL_DATADIR}/icons)
install(FILES ${icons}/lapwing.svg DESTINATION ${CMAKE_INSTALL_DATADIR}/icons/hicolor/scalable/apps)
