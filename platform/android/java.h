// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QCoreApplication>
#include <QJniEnvironment>
#include <QJniObject>
#include <QString>
#include <initializer_list>
#include <utility>

namespace lapwing::platform {

/// Every call to Java names its whole signature: tests/platform/android_java_test.py holds each against the
/// compiled class.

/// Hold on to it for as long as its object() is used.
inline QJniObject activity() {
    return QNativeInterface::QAndroidApplication::context();
}

inline QJniObject java_text(const QString& text) {
    return QJniObject::fromString(text);
}

inline QString text_of(jstring text) {
    return QJniObject(text).toString();
}

/// A static method. What Java throws is written to the log and counts as 0, false or nothing.
template <typename Result, typename... Arguments>
Result call(const char* owner, const char* method, const char* signature, Arguments... arguments) {
    return QJniObject::callStaticMethod<Result>(owner, method, signature, arguments...);
}

inline QString call_for_text(const char* owner, const char* method, const char* signature, jobject argument) {
    return QJniObject::callStaticObjectMethod(owner, method, signature, argument).toString();
}

inline bool register_natives(const char* owner, std::initializer_list<JNINativeMethod> methods) {
    QJniEnvironment java;
    return java.registerNativeMethods(owner, std::data(methods), int(methods.size()));
}

template <typename Work>
void on_main_thread(Work work) {
    QMetaObject::invokeMethod(qApp, std::move(work), Qt::QueuedConnection);
}

}  // namespace lapwing::platform
