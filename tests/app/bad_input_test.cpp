// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// What is wrong, where, and what to do: read from the screen; and nothing is lost.
#include <SQLiteCpp/Database.h>
#include <sys/mount.h>
#include <sys/resource.h>
#include <unistd.h>

#include <QTest>
#include <csignal>
#include <fstream>

#include "core/store/folder.h"
#include "core/workflow/sessions.h"
#include "tests/app/harness/errands.h"
#include "tests/app/harness/stock.h"

namespace lapwing::test {
namespace {

/// A small disk of our own; needs root.
class SmallDisk {
public:
    explicit SmallDisk(const char* size) {
        options_ = std::string("size=") + size;
        mounted_ = folder_.isValid() && mount("none", path().c_str(), "tmpfs", 0, options_.c_str()) == 0;
    }
    ~SmallDisk() {
        if (mounted_) umount2(path().c_str(), MNT_DETACH);
    }
    SmallDisk(const SmallDisk&) = delete;
    SmallDisk& operator=(const SmallDisk&) = delete;

    [[nodiscard]] bool mounted() const { return mounted_; }
    [[nodiscard]] std::string path() const { return folder_.path().toStdString(); }
    [[nodiscard]] bool write_protect(bool on) const {
        return mount("none", path().c_str(), "tmpfs", MS_REMOUNT | (on ? MS_RDONLY : 0), options_.c_str()) ==
               0;
    }
    void fill() const {
        std::ofstream ballast(path() + "/ballast", std::ios::binary);
        const std::string block(4096, 'x');
        while (ballast.write(block.data(), static_cast<std::streamsize>(block.size())).flush()) {
        }
    }
    void make_room() const { std::filesystem::remove(path() + "/ballast"); }

private:
    QTemporaryDir folder_;
    std::string options_;
    bool mounted_ = false;
};

/// Root may write anywhere: for as long as this lives, the program is "nobody" (65534 on every Linux).
class OrdinaryUser {
public:
    OrdinaryUser() : is_(seteuid(65534) == 0) {}
    ~OrdinaryUser() {
        if (is_ && seteuid(0) != 0) qFatal("Root can't become root again.");
    }
    OrdinaryUser(const OrdinaryUser&) = delete;
    OrdinaryUser& operator=(const OrdinaryUser&) = delete;

    [[nodiscard]] bool is() const { return is_; }

private:
    bool is_ = false;
};

/// Readable for everyone, and written to by everyone outside the library's own files.
void open_to_all(const std::string& folder) {
    using std::filesystem::perms;
    std::filesystem::permissions(folder, perms(0777));
    for (const auto& entry : std::filesystem::recursive_directory_iterator(folder))
        std::filesystem::permissions(entry.path(), entry.is_directory() ? perms(0755) : perms(0644));
}

/// The limit on the size of files stands in for a full disk where no disk can be mounted.
class FileSizeLimit {
public:
    explicit FileSizeLimit(rlim_t bytes) {
        signal(SIGXFSZ, SIG_IGN);
        getrlimit(RLIMIT_FSIZE, &before_);
        const rlimit now{bytes, before_.rlim_max};
        setrlimit(RLIMIT_FSIZE, &now);
    }
    ~FileSizeLimit() { setrlimit(RLIMIT_FSIZE, &before_); }
    FileSizeLimit(const FileSizeLimit&) = delete;
    FileSizeLimit& operator=(const FileSizeLimit&) = delete;

private:
    rlimit before_{};
};

EngineId stocked(Phone& phone, int sessions = 1) {
    Stock stock(phone.desk());
    const auto engine = stock.engine("Harbour two", 2);
    for (int i = 0; i < sessions; ++i)
        stock.readings(stock.session(engine, "As found"), 2);
    return engine;
}

}  // namespace

#define DO(action) QVERIFY2(action, qPrintable(errands.why() + " / " + thumb.why() + " / " + phone.why()))

class BadInputTest : public QObject {
    Q_OBJECT

private slots:
    void an_engine_without_cylinders();
    void a_full_disk();
    void a_read_only_folder();
    void a_sound_library_after_an_unclean_end_needs_no_word();
    void a_damaged_library();
    void a_newer_library();
    void a_place_that_is_no_page();
    void a_pad_whose_session_is_gone();
};

void BadInputTest::an_engine_without_cylinders() {
    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);
    DO(thumb.touch(QStringLiteral("addEngine")));
    DO(thumb.write(QStringLiteral("name"), QStringLiteral("None")));
    DO(thumb.write(QStringLiteral("cylinders"), QStringLiteral("0")));
    DO(thumb.touch(QStringLiteral("keep")));
    DO(thumb.reads(QStringLiteral("1 to 16")));
    QVERIFY(phone.desk().engines().empty());
    // Nothing typed is lost: put right, it goes in.
    DO(thumb.touch_in(QStringLiteral("cylinders"), QStringLiteral("field")));
    thumb.key(Qt::Key_End);
    thumb.key(Qt::Key_Backspace);
    thumb.keys(QStringLiteral("2"));
    DO(thumb.touch(QStringLiteral("keep")));
    QVERIFY2(phone.arrives(QStringLiteral("EngineCard")), qPrintable(phone.why()));
    QCOMPARE(errands.engine()->name, std::string("None"));
    // Nor later, on its card.
    DO(thumb.touch(QStringLiteral("line_count")));
    settle(50);
    thumb.key(Qt::Key_Backspace);
    thumb.keys(QStringLiteral("0"));
    DO(thumb.touch(QStringLiteral("keep")));
    DO(thumb.reads(QStringLiteral("1 to 16")));
    QCOMPARE(errands.engine()->cylinders.size(), 2U);
}

void BadInputTest::a_full_disk() {
    const bool root = geteuid() == 0;
    std::unique_ptr<SmallDisk> disk;
    if (root) disk = std::make_unique<SmallDisk>("4m");
    const bool mounted = disk && disk->mounted();
    qInfo("full disk by %s", mounted ? "a small disk of its own" : "a limit on the size of files");
    QTemporaryDir plain;
    Phone phone(mounted ? disk->path() : plain.path().toStdString(), {412, 915});
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Errands errands(phone);
    stocked(phone);
    phone.desk().flush();
    settle(50);
    const auto session = errands.visit()->session.id;
    phone.go(QStringLiteral("Pad"), {{"sessionId", QString::fromStdString(session.text())}, {"test", "dry"}});
    DO(errands.free_pad());
    DO(thumb.type(QStringLiteral("9.3")));
    phone.desk().flush();
    const auto before = errands.visit()->readings.size();
    {
        std::unique_ptr<FileSizeLimit> limit;
        if (mounted)
            disk->fill();
        else
            limit = std::make_unique<FileSizeLimit>(512);
        DO(thumb.touch(QStringLiteral("keep")));
        DO(thumb.reads(mounted ? QStringLiteral("no room left") : QStringLiteral("was not stored")));
        QCOMPARE(errands.visit()->readings.size(), before);
    }
    // What was typed stands on the pad again, and goes in once there is room.
    DO(thumb.reads(QStringLiteral("9.3")));
    if (mounted) disk->make_room();
    DO(errands.keep({}));
    const auto visit = errands.visit();
    QCOMPARE(visit->readings.size(), before + 1);
    QCOMPARE(visit->readings.back().final->digits(), std::string("9.3"));
}

void BadInputTest::a_read_only_folder() {
    const bool root = geteuid() == 0;
    std::unique_ptr<SmallDisk> disk;
    QTemporaryDir plain;
    if (root) disk = std::make_unique<SmallDisk>("4m");
    const bool mounted = disk && disk->mounted();
    const bool nobody = root && !mounted;
    qInfo("read-only by %s", mounted  ? "a small disk of its own"
                             : nobody ? "being an ordinary user for as long"
                                      : "permissions");
    const std::string folder = mounted ? disk->path() : plain.path().toStdString();
    const auto protect = [&](bool on) {
        if (mounted) return disk->write_protect(on);
        if (nobody) open_to_all(folder);
        std::filesystem::permissions(folder + "/data",
                                     on ? std::filesystem::perms(0555) : std::filesystem::perms(0755));
        return true;
    };
    {
        Phone phone(folder, {412, 915});
        QVERIFY2(phone.on(), qPrintable(phone.why()));
        stocked(phone);
    }
    QVERIFY(protect(true));
    {
        const auto ordinary = nobody ? std::make_unique<OrdinaryUser>() : nullptr;
        if (ordinary && !ordinary->is()) QSKIP("Root here can neither mount a disk nor be an ordinary user.");
        Phone phone(folder, {412, 915});
        QVERIFY(!phone.on());
        QVERIFY2(phone.has_window(), "no window says what is wrong");
        auto& thumb = phone.thumb();
        QVERIFY2(thumb.reads(QStringLiteral("can't be written")), qPrintable(thumb.why()));
        QVERIFY2(thumb.reads(QString::fromStdString(folder)), qPrintable(thumb.why()));
        QVERIFY2(thumb.sees(QStringLiteral("close")), qPrintable(thumb.why()));
    }
    QVERIFY(protect(false));
    Phone phone(folder, {412, 915});
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    QCOMPARE(phone.desk().engines().size(), 1U);
}

void BadInputTest::a_place_that_is_no_page() {
    // As after an update that named a page otherwise.
    QTemporaryDir own;
    const std::string folder = own.path().toStdString();
    const QString key = QStringLiteral("place");
    {
        Phone phone(folder, {412, 915});
        QVERIFY2(phone.on(), qPrintable(phone.why()));
        phone.app().keepDraft(key,
                              QStringLiteral(R"([{"name":"Settings","args":{}},{"name":"Gone","args":{}}])"));
        phone.desk().flush();
    }
    Phone phone(folder, {412, 915});
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    QVERIFY2(phone.arrives(QStringLiteral("Settings")), qPrintable(phone.why()));
    QVERIFY(wait_until([&] { return !phone.app().draft(key).contains(QStringLiteral("Gone")); }));
    QVERIFY(phone.app().draft(key).contains(QStringLiteral("Settings")));
}

/// As beside the list, where a session that was begun is taken back while its pad stands open.
void BadInputTest::a_pad_whose_session_is_gone() {
    Phone phone;
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    Stock stock(phone.desk());
    const auto session = stock.session(stock.engine("Harbour twin", 2), "As found");
    phone.desk().flush();
    for (const char* page : {"Pad", "Clearances", "Session"}) {
        QVariantMap args{{"sessionId", QString::fromStdString(session.text())}};
        if (std::string_view(page) == "Pad") args["test"] = "dry";
        phone.go(QString::fromLatin1(page), args);
        QVERIFY2(phone.arrives(QString::fromLatin1(page)), qPrintable(phone.why()));
        QVERIFY(wait_until([&] {
            return thumb.find(QStringLiteral("keep"), phone.page_item()) ||
                   thumb.find(QStringLiteral("next"), phone.page_item());
        }));
        QVERIFY(phone.run(workflow::remove_session(session)));
        QVERIFY(wait_until(
            [&] { return thumb.words().join(u'\n').contains(QStringLiteral("This session is gone")); }));
        QVERIFY(!thumb.sees(QStringLiteral("keep")));
        QVERIFY(!thumb.sees(QStringLiteral("next")));
        thumb.keys(QStringLiteral("11"));
        thumb.key(Qt::Key_Return);
        QCOMPARE(phone.page(), QString::fromLatin1(page));
        phone.home();
        phone.desk().undo(phone.desk().steps().front().number);
        phone.desk().flush();
    }
}

void BadInputTest::a_sound_library_after_an_unclean_end_needs_no_word() {
    QTemporaryDir own, other;
    const std::string folder = own.path().toStdString(), left = other.path().toStdString();
    {
        Phone phone(folder, {412, 915});
        QVERIFY2(phone.on(), qPrintable(phone.why()));
        stocked(phone, 3);
        // As the system leaves it when it ends an app.
        std::filesystem::copy(
            folder, left,
            std::filesystem::copy_options::recursive | std::filesystem::copy_options::overwrite_existing);
    }
    Phone phone(left, {412, 915});
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    QVERIFY2(thumb.reads(QStringLiteral("Harbour two")), qPrintable(thumb.why()));
    settle(500);
    QVERIFY2(thumb.words().filter(QStringLiteral("closed properly")).isEmpty(),
             qPrintable(thumb.words().join(u'|')));
}

void BadInputTest::a_damaged_library() {
    QTemporaryDir own;
    const std::string folder = own.path().toStdString();
    const store::Places places{std::filesystem::path(folder) / "data"};
    {
        Phone phone(folder, {412, 915});
        QVERIFY2(phone.on(), qPrintable(phone.why()));
        stocked(phone, 3);
    }
    {
        // The next start makes the day's backup.
        Phone phone(folder, {412, 915});
        QVERIFY2(phone.on(), qPrintable(phone.why()));
        QVERIFY(wait_until(
            [&] {
                std::error_code none;
                for (const auto& entry : std::filesystem::directory_iterator(places.backups(), none))
                    if (entry.path().extension() == ".sqlite") return true;
                return false;
            },
            8000));
    }
    const auto size = std::filesystem::file_size(places.library());
    {
        std::fstream file(places.library(), std::ios::in | std::ios::out | std::ios::binary);
        file.seekp(0);
        const std::string rubbish(size, '\x5a');
        file.write(rubbish.data(), static_cast<std::streamsize>(size));
    }
    Phone phone(folder, {412, 915});
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    auto& thumb = phone.thumb();
    QVERIFY2(thumb.reads(QStringLiteral("The library was damaged")), qPrintable(thumb.why()));
    QVERIFY2(thumb.reads(QStringLiteral("stands in for it")), qPrintable(thumb.why()));
    QVERIFY2(thumb.reads(QStringLiteral("Harbour two")), qPrintable(thumb.why()));
    const auto engines = phone.desk().engines();
    QCOMPARE(engines.size(), 1U);
    QCOMPARE(phone.desk().sessions(engines[0].id).size(), std::size_t(3));
    bool aside = false;
    for (const auto& entry : std::filesystem::directory_iterator(places.folder))
        aside = aside || (entry.path().filename().string().starts_with("library.damaged-") &&
                          entry.file_size() == size);
    QVERIFY2(aside, "the damaged file was not kept");
}

void BadInputTest::a_newer_library() {
    QTemporaryDir own;
    const std::string folder = own.path().toStdString();
    const store::Places places{std::filesystem::path(folder) / "data"};
    {
        Phone phone(folder, {412, 915});
        QVERIFY2(phone.on(), qPrintable(phone.why()));
        stocked(phone);
    }
    int version = 0;
    {
        SQLite::Database file(places.library().string(), SQLite::OPEN_READWRITE);
        version = file.execAndGet("PRAGMA user_version").getInt();
        file.exec("PRAGMA user_version = 9000");
    }
    {
        Phone phone(folder, {412, 915});
        QVERIFY(!phone.on());
        QVERIFY2(phone.has_window(), "no window says what is wrong");
        auto& thumb = phone.thumb();
        QVERIFY2(thumb.reads(QStringLiteral("newer")), qPrintable(thumb.why()));
    }
    {
        SQLite::Database file(places.library().string(), SQLite::OPEN_READWRITE);
        QCOMPARE(file.execAndGet("PRAGMA user_version").getInt(), 9000);
        file.exec("PRAGMA user_version = " + std::to_string(version));
    }
    Phone phone(folder, {412, 915});
    QVERIFY2(phone.on(), qPrintable(phone.why()));
    QCOMPARE(phone.desk().engines().size(), 1U);
}

}  // namespace lapwing::test

LAPWING_APP_TEST_MAIN(lapwing::test::BadInputTest)
#include "bad_input_test.moc"
