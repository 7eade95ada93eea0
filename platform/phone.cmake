# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0

# What the app's target needs on Android and iOS, where it is packed together with everything that it brings along.
set(LAPWING_VERSION_CODE 1)  # raised with every upload to a store

if(ANDROID)
  target_link_libraries(lapwing PRIVATE lapwing_platform_android)
  set_target_properties(lapwing PROPERTIES
    QT_ANDROID_PACKAGE_SOURCE_DIR ${PROJECT_SOURCE_DIR}/platform/android
    QT_ANDROID_PACKAGE_NAME org.lapwing.lapwing
    QT_ANDROID_VERSION_NAME ${PROJECT_VERSION}
    QT_ANDROID_VERSION_CODE ${LAPWING_VERSION_CODE}
    QT_ANDROID_MIN_SDK_VERSION 26
    QT_ANDROID_TARGET_SDK_VERSION 34
    # Beside the app's own library, where platform/api/part.h looks first.
    QT_ANDROID_EXTRA_LIBS "${PROJECT_BINARY_DIR}/qml/app/liblapwing_media.so;${PROJECT_BINARY_DIR}/qml/app/liblapwing_photo_eye.so")
elseif(IOS)
  set(ios ${PROJECT_SOURCE_DIR}/platform/ios)
  target_link_libraries(lapwing PRIVATE lapwing_platform_ios lapwing_media lapwing_photo_eye)
  # Nothing calls these by name: without a word the linker leaves them out.
  target_link_options(lapwing PRIVATE -Wl,-u,_lapwing_media -Wl,-u,_lapwing_photo_eye
    -Wl,-exported_symbol,_lapwing_media -Wl,-exported_symbol,_lapwing_photo_eye)
  target_sources(lapwing PRIVATE ${ios}/Assets.xcassets ${ios}/PrivacyInfo.xcprivacy)
  set_source_files_properties(${ios}/Assets.xcassets ${ios}/PrivacyInfo.xcprivacy PROPERTIES MACOSX_PACKAGE_LOCATION Resources)
  set_target_properties(lapwing PROPERTIES
    MACOSX_BUNDLE ON
    MACOSX_BUNDLE_INFO_PLIST ${ios}/Info.plist
    MACOSX_BUNDLE_GUI_IDENTIFIER org.lapwing.lapwing
    MACOSX_BUNDLE_SHORT_VERSION_STRING ${PROJECT_VERSION}
    MACOSX_BUNDLE_BUNDLE_VERSION ${LAPWING_VERSION_CODE}
    XCODE_ATTRIBUTE_ASSETCATALOG_COMPILER_APPICON_NAME AppIcon
    XCODE_ATTRIBUTE_PRODUCT_BUNDLE_IDENTIFIER org.lapwing.lapwing
    XCODE_ATTRIBUTE_TARGETED_DEVICE_FAMILY "1,2")
endif()
