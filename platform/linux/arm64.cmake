# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0

# Cross build for arm64 phones with Debian 12. LAPWING_SYSROOT, in the environment or on the command line, is the
# folder that platform/linux/sysroot filled.
set(CMAKE_SYSTEM_NAME Linux)
set(CMAKE_SYSTEM_PROCESSOR aarch64)
if(NOT LAPWING_SYSROOT)
  set(LAPWING_SYSROOT $ENV{LAPWING_SYSROOT})
endif()
if(NOT EXISTS ${LAPWING_SYSROOT}/usr/lib/aarch64-linux-gnu)
  message(FATAL_ERROR "No arm64 system lies at LAPWING_SYSROOT (${LAPWING_SYSROOT}). Make one: platform/linux/sysroot FOLDER")
endif()
# CMake's own trials read this file too and don't see the command line.
set(CMAKE_TRY_COMPILE_PLATFORM_VARIABLES LAPWING_SYSROOT)

set(triplet aarch64-linux-gnu)
set(CMAKE_C_COMPILER ${triplet}-gcc)
set(CMAKE_CXX_COMPILER ${triplet}-g++)
set(CMAKE_LIBRARY_ARCHITECTURE ${triplet})
set(CMAKE_SYSROOT ${LAPWING_SYSROOT})
set(CMAKE_FIND_ROOT_PATH ${LAPWING_SYSROOT})
set(CMAKE_FIND_ROOT_PATH_MODE_PROGRAM NEVER)
set(CMAKE_FIND_ROOT_PATH_MODE_LIBRARY ONLY)
set(CMAKE_FIND_ROOT_PATH_MODE_INCLUDE ONLY)
set(CMAKE_FIND_ROOT_PATH_MODE_PACKAGE ONLY)

# Debian chooses these two when they are installed, and in a sysroot nothing is installed.
set(linked "-Wl,-z,relro,-z,now")
foreach(folder blas lapack)
  string(APPEND linked " -Wl,-rpath-link,${LAPWING_SYSROOT}/usr/lib/${triplet}/${folder}")
endforeach()
set(CMAKE_EXE_LINKER_FLAGS_INIT "${linked}")
set(CMAKE_MODULE_LINKER_FLAGS_INIT "${linked}")
set(CMAKE_SHARED_LINKER_FLAGS_INIT "${linked}")

set(ENV{PKG_CONFIG_SYSROOT_DIR} ${LAPWING_SYSROOT})
set(ENV{PKG_CONFIG_LIBDIR} ${LAPWING_SYSROOT}/usr/lib/${triplet}/pkgconfig:${LAPWING_SYSROOT}/usr/share/pkgconfig)

# Qt's tools (moc, rcc, qmlcachegen) run here, so they are this machine's.
set(QT_HOST_PATH /usr CACHE PATH "Qt of the machine that builds")
set(QT_HOST_PATH_CMAKE_DIR /usr/lib/${CMAKE_HOST_SYSTEM_PROCESSOR}-linux-gnu/cmake CACHE PATH "its CMake files")
