// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "platform/ios/ios_devices.h"

#include <QDesktopServices>
#include <QFile>
#include <QFileInfo>
#include <QFileOpenEvent>
#include <QGuiApplication>
#include <QStandardPaths>
#include <QStyleHints>
#include <QUrl>

#import <UIKit/UIKit.h>
#import <UniformTypeIdentifiers/UniformTypeIdentifiers.h>

// Built with -fobjc-arc. Qt's main thread is UIKit's main thread here.

/// Carries the chooser's answer to the caller, once. The chooser keeps its delegate weakly, so this keeps itself.
@interface LapwingPicked : NSObject <UIDocumentPickerDelegate>
@end

@implementation LapwingPicked {
    lapwing::platform::FilePicker::Picked _picked;
    LapwingPicked* _self;
}

- (instancetype)initWith:(lapwing::platform::FilePicker::Picked)picked {
    if ((self = [super init])) {
        _picked = std::move(picked);
        _self = self;
    }
    return self;
}

- (void)finish:(std::optional<QString>)file {
    if (const auto picked = std::exchange(_picked, {})) picked(std::move(file));
    _self = nil;
}

- (void)documentPicker:(UIDocumentPickerViewController*)controller
    didPickDocumentsAtURLs:(NSArray<NSURL*>*)urls {
    [self finish:urls.count ? std::optional(QString::fromNSString(urls.firstObject.path)) : std::nullopt];
}

- (void)documentPickerWasCancelled:(UIDocumentPickerViewController*)controller {
    [self finish:std::nullopt];
}

@end

namespace lapwing::platform {
namespace {

UIViewController* front() {
    for (UIScene* scene in UIApplication.sharedApplication.connectedScenes) {
        if (![scene isKindOfClass:UIWindowScene.class]) continue;
        for (UIWindow* window in ((UIWindowScene*)scene).windows) {
            if (!window.isKeyWindow) continue;
            UIViewController* top = window.rootViewController;
            while (top.presentedViewController)
                top = top.presentedViewController;
            return top;
        }
    }
    return nil;
}

/// On a tablet a sheet has to say where it comes from.
void present(UIViewController* sheet) {
    UIViewController* below = front();
    if (UIPopoverPresentationController* from = sheet.popoverPresentationController) {
        const CGRect all = below.view.bounds;
        from.sourceView = below.view;
        from.sourceRect = CGRectMake(CGRectGetMidX(all), CGRectGetMaxY(all) - 1, 1, 1);
    }
    [below presentViewController:sheet animated:YES completion:nil];
}

NSURL* url_of(const QString& file) {
    return [NSURL fileURLWithPath:file.toNSString()];
}

std::filesystem::path standard_path(QStandardPaths::StandardLocation location) {
    return QFile::encodeName(QStandardPaths::writableLocation(location)).toStdString();
}

}  // namespace

void IosShare::share(const QString& file, const QString& /*mediaType*/, Done done) {
    if (!QFileInfo::exists(file))
        return done(fail("share.no_file", "There is no file at {}. Make it again.", file.toStdString()));
    present([[UIActivityViewController alloc] initWithActivityItems:@[ url_of(file) ] applicationActivities:nil]);
    done({});
}

void IosFilePicker::open(const QString& /*title*/, const QList<FileKind>& kinds, Picked picked) {
    NSMutableArray<UTType*>* types = [NSMutableArray array];
    for (const FileKind& kind : kinds)
        for (const QString& glob : kind.globs)
            if (UTType* type = [UTType typeWithFilenameExtension:glob.section(QLatin1Char('.'), -1).toNSString()])
                [types addObject:type];
    if (types.count == 0) [types addObject:UTTypeData];
    UIDocumentPickerViewController* chooser =
        [[UIDocumentPickerViewController alloc] initForOpeningContentTypes:types asCopy:YES];
    LapwingPicked* answer = [[LapwingPicked alloc] initWith:std::move(picked)];
    chooser.delegate = answer;
    present(chooser);
}

void IosFilePicker::saveCopy(const QString& /*title*/, const QString& file, const QString& /*name*/,
                             const FileKind& /*kind*/, Picked picked) {
    UIDocumentPickerViewController* chooser =
        [[UIDocumentPickerViewController alloc] initForExportingURLs:@[ url_of(file) ] asCopy:YES];
    LapwingPicked* answer = [[LapwingPicked alloc] initWith:std::move(picked)];
    chooser.delegate = answer;
    present(chooser);
}

bool IosHaptics::available() const {
    return UIDevice.currentDevice.userInterfaceIdiom == UIUserInterfaceIdiomPhone;
}

void IosHaptics::tick() {
    [[[UISelectionFeedbackGenerator alloc] init] selectionChanged];
}

void IosKeepAwake::keepAwake(bool on) {
    UIApplication.sharedApplication.idleTimerDisabled = on;
}

bool IosKeepAwake::isOn() const {
    return UIApplication.sharedApplication.idleTimerDisabled;
}

std::optional<bool> IosAppearance::dark() const {
#if QT_VERSION >= QT_VERSION_CHECK(6, 5, 0)
    if (const auto scheme = QGuiApplication::styleHints()->colorScheme(); scheme != Qt::ColorScheme::Unknown)
        return scheme == Qt::ColorScheme::Dark;
#endif
    return {};
}

std::optional<double> IosAppearance::textScale() const {
    return [UIFontMetrics.defaultMetrics scaledValueForValue:100] / 100.0;
}

std::optional<bool> IosAppearance::reducedMotion() const {
    return UIAccessibilityIsReduceMotionEnabled();
}

void IosAppearance::listen(Changed changed) {
    NSNotificationCenter* news = NSNotificationCenter.defaultCenter;
    for (NSNotificationName name in
         @[ UIContentSizeCategoryDidChangeNotification, UIAccessibilityReduceMotionStatusDidChangeNotification ])
        [news addObserverForName:name
                          object:nil
                           queue:NSOperationQueue.mainQueue
                      usingBlock:^(NSNotification*) {
                          changed();
                      }];
#if QT_VERSION >= QT_VERSION_CHECK(6, 5, 0)
    QObject::connect(QGuiApplication::styleHints(), &QStyleHints::colorSchemeChanged, qApp, changed);
#endif
}

std::filesystem::path IosPaths::data() const {
    return data_ ? *data_ : standard_path(QStandardPaths::AppDataLocation);
}

std::filesystem::path IosPaths::documents() const {
    return standard_path(QStandardPaths::DocumentsLocation);
}

std::filesystem::path IosPaths::scratch() const {
    return standard_path(QStandardPaths::CacheLocation);
}

IosReceivedFiles::IosReceivedFiles(const std::filesystem::path& /*library*/) {
    qApp->installEventFilter(this);
}

void IosReceivedFiles::listen(std::function<void(const QString&)> opened) {
    opened_ = std::move(opened);
    for (const QString& file : std::exchange(early_, {}))
        opened_(file);
}

bool IosReceivedFiles::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::FileOpen) return QObject::eventFilter(watched, event);
    const QString file = static_cast<QFileOpenEvent*>(event)->url().toLocalFile();
    if (file.isEmpty()) return false;
    if (opened_)
        opened_(file);
    else
        early_.append(file);
    return true;
}

bool open_ios_settings() {
    return QDesktopServices::openUrl(QUrl(QString::fromNSString(UIApplicationOpenSettingsURLString)));
}

}  // namespace lapwing::platform
