// Runs the program rigband-file itself, as a script would.

#include "app/wording/chain_words.h"
#include "core/exchange/tables_out.h"
#include "core/store/connection.h"
#include "core/store/passing_file.h"
#include "tests/file/running.h"
#include "tests/support/laptop.h"

#include <QFile>
#include <QProcess>
#include <QStandardPaths>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <sys/stat.h>
#include <sys/wait.h>

namespace rig::test {
namespace {

namespace fs = std::filesystem;

void write(const std::string& path, const std::string& text)
{
    std::ofstream{path, std::ios::binary} << text;
}

constexpr fs::perms kOnlyRead = fs::perms::owner_read | fs::perms::group_read | fs::perms::others_read;
constexpr fs::perms kOnlyEnter = fs::perms::owner_exec | fs::perms::group_exec | fs::perms::others_exec;

class File : public testing::Test
{
protected:
    void SetUp() override
    {
        must(
            store.records().add(hangar.reading(between(450, 500), noonOf(dayOf(2026, 4, 11))), std::nullopt));
        store.close();
    }

    QString file() const { return QString::fromStdString(store.path()); }
    std::string at(const std::string& name) const { return elsewhere.file(name); }
    QString pathOf(const std::string& name) const { return QString::fromStdString(at(name)); }
    int readings()
    {
        store.reopen();
        const auto count = must(store.records().readings(hangar.airframe)).size();
        store.close();
        return static_cast<int>(count);
    }

    TempStore store;
    Hangar hangar{store.records()};
    TempFolder elsewhere;
};

TEST_F(File, TellsWhatIsInIt)
{
    const Answer answer = run({"check", file()});
    EXPECT_EQ(answer.status, 0) << answer.err.toStdString();
    EXPECT_TRUE(answer.out.contains("is a Rigband file")) << answer.out.toStdString();
    EXPECT_TRUE(answer.out.contains("Airframe QX-17. Couplings: 2. Riggings: 0. Readings: 1."))
        << answer.out.toStdString();
    EXPECT_EQ(answer.err, "");
}

TEST_F(File, OfAnOlderProgramIsSaidToBeNewNowAndItsCopyStandsBesideIt)
{
    fs::copy_file(RIG_TEST_DATA "/released/v3.rigband", at("old.rigband"));
    const std::string before = textOf(at("old.rigband"));
    const Answer look = run({"check", pathOf("old.rigband")});
    EXPECT_TRUE(look.out.contains("of an older layout")) << look.out.toStdString() << look.err.toStdString();
    EXPECT_EQ(textOf(at("old.rigband")), before);
    EXPECT_TRUE(
        run({"export", pathOf("old.rigband"), "--csv", pathOf("a")}).err.contains("written by an older"));
    EXPECT_EQ(run({"export", pathOf("old.rigband"), "--csv", pathOf("b")}).err, "") << "it is new now";
}

TEST_F(File, SaysWhyItCannotBeOpened)
{
    write(at("notes.rigband"), "only notes");
    fs::copy_file(store.path(), at("damaged.rigband"));
    fs::resize_file(at("damaged.rigband"), fs::file_size(at("damaged.rigband")) / 2);
    const std::string damaged = textOf(at("damaged.rigband"));
    const std::pair<const char*, const char*> table[] = {
        {"missing.rigband", "is not there"},
        {"notes.rigband", "is not a Rigband file"},
        {"damaged.rigband", "is damaged"},
    };
    for (const auto& [name, about] : table) {
        SCOPED_TRACE(name);
        const Answer answer = run({"check", pathOf(name)});
        EXPECT_EQ(answer.status, 1);
        EXPECT_EQ(answer.out, "");
        EXPECT_TRUE(answer.err.contains(about)) << answer.err.toStdString();
        EXPECT_TRUE(answer.err.contains(name)) << answer.err.toStdString();
    }
    EXPECT_EQ(textOf(at("damaged.rigband")), damaged);
}

TEST_F(File, NamesARowThatWasWrittenByHandAndCannotStand)
{
    store.reopen();
    SignOff signOff;
    signOff.airframe = hangar.airframe;
    signOff.person = hangar.vale;
    signOff.signer = hangar.oren;
    signOff.day = dayOf(2026, 4, 11);
    must(store.records().add(signOff));
    StoreFile::Connection& connection = store.file().connection();
    must(connection.run("PRAGMA ignore_check_constraints = ON"));
    QString trigger;
    must(connection.each("SELECT sql FROM sqlite_schema WHERE name = 'sign_off_no_update'", {},
                         [&trigger](Row& row) { trigger = QString::fromStdString(row.text()); }));
    must(connection.run("DROP TRIGGER sign_off_no_update"));
    must(connection.run("UPDATE sign_off SET signer = person"));
    must(connection.run(trigger));
    store.close();
    const Answer answer = run({"check", file()});
    EXPECT_NE(answer.status, 0);
    EXPECT_TRUE(answer.err.contains("the same person twice")) << answer.err.toStdString();
    EXPECT_TRUE(answer.err.contains(ChainWords::faults(1))) << answer.err.toStdString();
    EXPECT_TRUE(answer.err.contains("is damaged")) << answer.err.toStdString();
    EXPECT_FALSE(answer.out.contains("is a Rigband file")) << "one of the two: " << answer.out.toStdString();
}

TEST_F(File, GoesOutAsTablesOnceAndNeverOverOthers)
{
    const Answer answer = run({"export", file(), "--csv", pathOf("tables")});
    EXPECT_EQ(answer.status, 0) << answer.err.toStdString();
    for (const char* name : {"readings.csv", "couplings.csv", "events.csv", "people.csv", "gauges.csv",
                             "joint_play.csv", "sign_offs.csv", "supervised.csv"})
        EXPECT_TRUE(fs::exists(at("tables/") + name)) << name;
    store.reopen();
    EXPECT_EQ(textOf(at("tables/readings.csv")), must(writeReadings(store.records())));
    store.close();

    fs::remove(at("tables/readings.csv"));
    write(at("tables/people.csv"), "mine");
    const Answer again = run({"export", file(), "--csv", pathOf("tables")});
    EXPECT_EQ(again.status, 1);
    EXPECT_TRUE(again.err.contains("is there already")) << again.err.toStdString();
    EXPECT_EQ(textOf(at("tables/people.csv")), "mine");
    EXPECT_FALSE(fs::exists(at("tables/readings.csv")));
}

TEST_F(File, GoesOutWithoutNamesAndSaysWhatWasLeftOut)
{
    const Answer answer = run({"export", file(), "--csv", pathOf("tables"), "--nameless"});
    EXPECT_EQ(answer.status, 0) << answer.err.toStdString();
    EXPECT_TRUE(answer.out.contains("counts.csv")) << answer.out.toStdString();
    EXPECT_TRUE(answer.out.contains("Left out: notes, reasons")) << answer.out.toStdString();
    EXPECT_EQ(std::ranges::distance(fs::directory_iterator{at("tables")}), 9);
    for (const auto& table : fs::directory_iterator{at("tables")})
        for (const char* name : {"Oren", "Vale", "QX-17", "Set A"})
            EXPECT_EQ(textOf(table.path()).find(name), std::string::npos) << table.path() << name;
    EXPECT_NE(textOf(at("tables/readings.csv")).find("1,Left aileron,2026-04-11,0.45,0.50,1,A,"),
              std::string::npos)
        << textOf(at("tables/readings.csv"));
}

TEST_F(File, TakesATableOnce)
{
    write(at("readings.csv"), "airframe;coupling;date;enters_mm;refuses_mm;person\n"
                              "QX-17;Left aileron;2026-04-12;0,45;0,50;T. Vale\n"
                              "QX-17;Right aileron;2026-04-12;0,60;0,65;T. Vale\n");
    const QStringList command{"import", file(), "--csv", pathOf("readings.csv")};
    const Answer first = run(command);
    EXPECT_EQ(first.status, 0) << first.err.toStdString();
    EXPECT_TRUE(first.out.contains("2 readings were imported, with one rigging.")) << first.out.toStdString();
    EXPECT_EQ(readings(), 3);
    const Answer second = run(command);
    EXPECT_EQ(second.status, 2);
    EXPECT_TRUE(second.err.contains("Line 2 is a reading of “Left aileron” that the file holds already"))
        << second.err.toStdString();
    EXPECT_TRUE(second.err.contains("Line 3")) << second.err.toStdString();
    EXPECT_TRUE(second.err.contains("Nothing was imported.")) << second.err.toStdString();
    EXPECT_EQ(readings(), 3);
}

TEST_F(File, IsLeftAsItIsByATableWithABadRow)
{
    write(at("readings.csv"), "airframe,coupling,date,enters_mm,refuses_mm,person\n"
                              "QX-17,Left aileron,2026-04-12,0.45,0.50,T. Vale\n"
                              "QX-17,Left aileron,2026-04-13,NaN,0.50,T. Vale\n");
    const std::string before = textOf(store.path());
    const Answer answer = run({"import", file(), "--csv", pathOf("readings.csv")});
    EXPECT_EQ(answer.status, 2);
    EXPECT_EQ(answer.out, "");
    EXPECT_TRUE(answer.err.contains("Line 3 has “NaN” in the column enters_mm")) << answer.err.toStdString();
    EXPECT_EQ(textOf(store.path()), before);
}

TEST_F(File, SaysThatATableCannotBeRead)
{
    const Answer answer = run({"import", file(), "--csv", pathOf("missing.csv")});
    EXPECT_EQ(answer.status, 1);
    EXPECT_TRUE(answer.err.contains("missing.csv cannot be read")) << answer.err.toStdString();
}

TEST_F(File, ThatMayOnlyBeReadIsLookedAtAndExportedButTakesNothing)
{
    fs::permissions(store.folder(), fs::perms::all);
    fs::permissions(elsewhere.path(), fs::perms::all);
    fs::permissions(store.path(), kOnlyRead);
    write(at("readings.csv"),
          "airframe,coupling,date,enters_mm,person\nQX-17,Left aileron,2026-04-12,0.45,T. Vale\n");
    const std::string before = textOf(store.path());
    const Answer look = run({"check", file()}, RunAs::SomebodyElse);
    EXPECT_EQ(look.status, 0) << look.err.toStdString();
    EXPECT_TRUE(look.out.contains("may only be read")) << look.out.toStdString();
    const Answer out = run({"export", file(), "--csv", pathOf("tables")}, RunAs::SomebodyElse);
    EXPECT_EQ(out.status, 0) << out.err.toStdString();
    const Answer in = run({"import", file(), "--csv", pathOf("readings.csv")}, RunAs::SomebodyElse);
    EXPECT_EQ(in.status, 1);
    EXPECT_TRUE(in.err.contains("may only be read, so nothing was written")) << in.err.toStdString();
    EXPECT_EQ(textOf(store.path()), before);
}

TEST_F(File, GoesOutNowhereThatMayNotBeWrittenTo)
{
    fs::permissions(store.folder(), fs::perms::all);
    fs::permissions(store.path(), fs::perms::all);
    fs::permissions(elsewhere.path(), kOnlyRead | kOnlyEnter);
    const Answer made = run({"export", file(), "--csv", pathOf("tables")}, RunAs::SomebodyElse);
    EXPECT_EQ(made.status, 1);
    EXPECT_TRUE(made.err.contains("cannot be made")) << made.err.toStdString();
    const Answer there = run({"export", file(), "--csv", QString::fromStdString(elsewhere.path().string())},
                             RunAs::SomebodyElse);
    EXPECT_EQ(there.status, 1);
    EXPECT_TRUE(there.err.contains("cannot be written")) << there.err.toStdString();
    EXPECT_TRUE(fs::is_empty(elsewhere.path()));
}

TEST_F(File, IsSalvagedIntoANewOneOnly)
{
    const Answer answer = run({"salvage", file(), pathOf("rescued.rigband")});
    EXPECT_EQ(answer.status, 0) << answer.err.toStdString();
    EXPECT_TRUE(answer.out.contains("Facts read and kept in")) << answer.out.toStdString();
    const Answer look = run({"check", pathOf("rescued.rigband")});
    EXPECT_TRUE(look.out.contains("Readings: 1.")) << look.out.toStdString();
    const Answer again = run({"salvage", file(), pathOf("rescued.rigband")});
    EXPECT_EQ(again.status, 1);
    EXPECT_TRUE(again.err.contains("rescued.rigband is there already")) << again.err.toStdString();
}

TEST_F(File, OfTheInventedHangarSpeaksTheLanguageOfTheCommandLine)
{
    const QByteArray before = qgetenv("LC_ALL");
    const std::pair<const char*, const char*> spoken[] = {
        {"C.UTF-8", "Left aileron"}, {"de_DE.UTF-8", "Querruder links"}, {"fr_FR.UTF-8", "Aileron gauche"}};
    for (const auto& [locale, aileron] : spoken) {
        const std::string path = at(std::string{locale} + ".rigband");
        qputenv("LC_ALL", locale);
        const Answer told = run({"demo", QString::fromStdString(path)});
        qputenv("LC_ALL", before);
        ASSERT_EQ(told.status, 0) << told.err.toStdString();
        const auto made = must(StoreFile::open(path, OpenAs::Existing, store.clock()));
        Records records{*made, store.ids(), store.clock()};
        const AirframeId airframe = must(records.airframes()).front().id;
        EXPECT_EQ(must(records.couplings(airframe)).front().name, aileron);
    }
}

TEST_F(File, OfTheInventedHangarComesWithItsSampleTableAndGoesRoundWhole)
{
    const QString demo = pathOf("demo.rigband");
    const Answer made = run({"demo", demo});
    ASSERT_EQ(made.status, 0) << made.err.toStdString();
    EXPECT_EQ(run({"demo", demo}).status, 1);
    EXPECT_EQ(run({"export", demo, "--csv", pathOf("tables")}).status, 0);
    const Answer back = run({"import", demo, "--csv", pathOf("tables/readings.csv")});
    EXPECT_EQ(back.status, 2); // every one of them is there already, and nothing else is wrong with any
    const auto complaints = back.err.trimmed().split('\n');
    for (const QString& line :
         complaints.first(complaints.size() - 2)) // then how many more, and that nothing came in
        EXPECT_TRUE(line.contains("holds already")) << line.toStdString();
    const Answer sample = run({"import", demo, "--csv", QStringLiteral(RIG_SAMPLES "/readings.csv")});
    EXPECT_EQ(sample.status, 0) << sample.err.toStdString();
}

TEST_F(File, GivesTheRecordOfADayAsPagesWhoseTextCanBeRead)
{
    store.reopen();
    const RecordId record = must(store.records().add(hangar.record(noonOf(dayOf(2026, 4, 11)))));
    RecordClose close;
    close.record = record;
    close.first = hangar.oren;
    close.second = hangar.vale;
    must(store.records().add(close));
    store.close();
    const QString pdf = pathOf("record.pdf");
    const QStringList wanted{"record", file(), "--airframe", "QX-17", "--day", "2026-04-11", "--out", pdf};
    const Answer answer = run(wanted);
    EXPECT_EQ(answer.status, 0) << answer.err.toStdString();
    EXPECT_TRUE(textOf(at("record.pdf")).starts_with("%PDF-"));

    const Answer again = run(wanted);
    EXPECT_EQ(again.status, 1) << "never over another file";
    EXPECT_TRUE(again.err.contains("is there already")) << again.err.toStdString();

    const QString reader = QStandardPaths::findExecutable("pdftotext");
    if (reader.isEmpty())
        GTEST_SKIP() << "pdftotext (poppler-utils) is not installed";
    const QString text = outputOf(reader, {pdf, "-"}).simplified();
    for (const char* part : {"QX-17 · Orvane 15", "Rigging record, 11 April 2026", "led by M. Oren",
                             "Not an aircraft record", "Page 1 of"})
        EXPECT_TRUE(text.contains(QString::fromUtf8(part))) << part << " in " << text.toStdString();
}

TEST_F(File, GivesEachOfTheRecordsOfADayAndSaysThatThereAreSeveral)
{
    store.reopen();
    Moment later = noonOf(dayOf(2026, 4, 11));
    later.utcSeconds += 2 * 3600 + 5 * 60;
    must(store.records().add(hangar.record(later)));
    must(store.records().add(hangar.record(noonOf(dayOf(2026, 4, 11))))); // typed in afterwards
    store.close();
    const auto printed = [this](const std::string& out, const QStringList& time) {
        return run(QStringList{"record", file(), "--airframe", "QX-17", "--day", "2026-04-11", "--out",
                               pathOf(out)} +
                   time);
    };
    const Answer last = printed("last.pdf", {});
    EXPECT_EQ(last.status, 0) << last.err.toStdString();
    EXPECT_TRUE(
        last.out.contains("The day has 2 rigging records, begun at 12:00, 14:05. The one begun at 14:05 "
                          "was written"))
        << last.out.toStdString();
    const Answer first = printed("first.pdf", {"--time", "12:00"});
    EXPECT_EQ(first.status, 0) << first.err.toStdString();
    EXPECT_TRUE(first.out.contains("The one begun at 12:00 was written")) << first.out.toStdString();
    EXPECT_NE(textOf(at("first.pdf")), textOf(at("last.pdf")));
    const Answer none = printed("none.pdf", {"--time", "09:00"});
    EXPECT_EQ(none.status, 1);
    EXPECT_TRUE(none.err.contains("began at 12:00, 14:05")) << none.err.toStdString();
    EXPECT_EQ(printed("none.pdf", {"--time", "noon"}).status, 2);
    EXPECT_EQ(
        run({"record", file(), "--airframe", "QX-17", "--time", "12:00", "--out", pathOf("x.pdf")}).status, 2)
        << "a time without its day";
    EXPECT_FALSE(fs::exists(at("none.pdf")));
}

TEST_F(File, SaysWhyThereIsNoRecordToPrint)
{
    const std::pair<QStringList, const char*> table[] = {
        {{"--airframe", "QX-17", "--out", pathOf("x.pdf")}, "no such rigging record of QX-17"},
        {{"--airframe", "QX-99", "--out", pathOf("x.pdf")}, "knows no airframe QX-99"},
        {{"--airframe", "QX-17", "--day", "11/04/2026", "--out", pathOf("x.pdf")}, "is no day"},
        {{"--airframe", "QX-17"}, "Use one of these"},
    };
    for (const auto& [options, about] : table) {
        const Answer answer = run(QStringList{"record", file()} + options);
        EXPECT_NE(answer.status, 0);
        EXPECT_TRUE(answer.err.contains(about)) << answer.err.toStdString();
    }
    EXPECT_FALSE(fs::exists(at("x.pdf")));
}

TEST_F(File, IsNotTouchedByWrongUse)
{
    const QList<QStringList> wrong = {
        {},
        {"polish", file()},
        {"check"},
        {"check", file(), file()},
        {"check", file(), "--csv", "x"},
        {"export", file()},
        {"export", file(), "--csv"},
        {"check", file(), "--nameless"},
        {"import", file(), "--csv", "x", "--nameless"},
        {"import", file(), "--table", "x"},
        {"salvage", file()},
        {"report", file(), "--out", "x.pdf"},
        {"report", file(), "--airframe", "QX-17"},
        {"record", file(), "--airframe", "QX-17", "--out", "x.pdf", "--to", "2026-05-01"},
        {"demo"}};
    for (const QStringList& arguments : wrong) {
        SCOPED_TRACE(arguments.join(' ').toStdString());
        const Answer answer = run(arguments);
        EXPECT_EQ(answer.status, 2);
        EXPECT_EQ(answer.out, "");
        EXPECT_TRUE(answer.err.contains("rigband-file check FILE")) << answer.err.toStdString();
    }
    EXPECT_EQ(run({"--help"}).status, 0);
    EXPECT_EQ(run({"check", "--help"}).status, 0) << "asked behind a verb too";
}

TEST_F(File, IsNotTouchedByALook)
{
    const std::string before = textOf(store.path());
    EXPECT_EQ(run({"check", file()}).status, 0);
    EXPECT_EQ(textOf(store.path()), before);
    EXPECT_EQ(std::ranges::distance(fs::directory_iterator{store.folder()}), 1) << "no copy either";
}

TEST_F(File, OfTheInventedHangarHoldsNothingThatALookFinds)
{
    const Answer made = run({"demo", pathOf("demo.rigband")});
    ASSERT_EQ(made.status, 0) << made.err.toStdString();
    EXPECT_EQ(std::ranges::distance(fs::directory_iterator{elsewhere.path()}), 1);
    const Answer look = run({"check", pathOf("demo.rigband")});
    EXPECT_EQ(look.status, 0) << look.err.toStdString();
    EXPECT_EQ(look.err, "");
    EXPECT_TRUE(look.out.contains("whole and readable")) << look.out.toStdString();
}

TEST_F(File, TakesNoTableFromAPipeOrADeviceAndNoneThatIsTooLarge)
{
    ASSERT_EQ(::mkfifo(at("pipe.csv").c_str(), 0600), 0);
    write(at("large.csv"), "");
    fs::resize_file(at("large.csv"), 200'000'000);
    for (const QString& table : {pathOf("pipe.csv"), QStringLiteral("/dev/zero"), pathOf("")}) {
        const Answer answer = run({"import", file(), "--csv", table});
        EXPECT_EQ(answer.status, 1);
        EXPECT_TRUE(answer.err.contains("is no file but")) << answer.err.toStdString();
    }
    const Answer large = run({"import", file(), "--csv", pathOf("large.csv")});
    EXPECT_EQ(large.status, 1);
    EXPECT_TRUE(large.err.contains("larger than a table may be")) << large.err.toStdString();
    ASSERT_EQ(::mkfifo(at("pipe.rigband").c_str(), 0600), 0);
    EXPECT_EQ(run({"check", pathOf("pipe.rigband")}).status, 1);
    EXPECT_EQ(run({"salvage", pathOf("pipe.rigband"), pathOf("out.rigband")}).status, 1);
}

// Whatever was to be made, and of which command.
TEST_F(File, SaysThatTheFolderOfANewFileIsNotThere)
{
    run({"export", file(), "--json", pathOf("all.json")});
    write(at("couplings.csv"), "airframe,coupling,fitting_begins\nQX-17,Trim,2026-03-01\n");
    for (const char* folder : {"none", "all.json"}) {
        const QString out = pathOf((std::string{folder} + "/new").c_str());
        for (const QStringList& command :
             {QStringList{"demo", out}, QStringList{"export", file(), "--json", out},
              QStringList{"import", out, "--json", pathOf("all.json")},
              QStringList{"import", out, "--couplings", pathOf("couplings.csv")},
              QStringList{"salvage", file(), out}, QStringList{"join", file(), file(), "--out", out},
              QStringList{"part", file(), "--airframe", "QX-17", "--out", out},
              QStringList{"rename-person", file(), "--person", "M. Oren", "--as", "P 1", "--by", "T. Vale",
                          "--out", out},
              QStringList{"report", file(), "--airframe", "QX-17", "--out", out},
              QStringList{"record", file(), "--airframe", "QX-17", "--out", out},
              QStringList{"sheet", file(), "--airframe", "QX-17", "--out", out},
              QStringList{"card", file(), "--airframe", "QX-17", "--out", out},
              QStringList{"manual", "--out", out}}) {
            const Answer answer = run(command);
            EXPECT_EQ(answer.status, 1) << command.join(' ').toStdString();
            EXPECT_TRUE(answer.err.contains(out + " cannot be made: its folder is not there"))
                << command.join(' ').toStdString() << '\n'
                << answer.err.toStdString();
        }
    }
    EXPECT_TRUE(run({"export", file(), "--csv", pathOf("all.json")}).err.contains("is no folder but a file"));
    const Answer missing = run({"check", pathOf("none.rigband")});
    EXPECT_EQ(missing.status, 1);
    EXPECT_TRUE(missing.err.contains("is not there. Look whether its name"));
    EXPECT_FALSE(missing.err.contains("any more")) << "nobody knows that it was there";
    const Answer exported = run({"export", pathOf("none.rigband"), "--csv", pathOf("tables")});
    EXPECT_EQ(exported.status, 1);
    EXPECT_EQ(exported.err, missing.err) << "the same of the same";
}

TEST_F(File, SaysOfWhatWasSalvagedThatAnotherProgramHadChangedIt)
{
    {
        const auto open =
            must(StoreFile::Connection::open(store.path(), StoreFile::Connection::Access::Writing));
        byHand(*open, "reading", "UPDATE reading SET enters_um = 400");
    }
    const Answer salvaged = run({"salvage", file(), pathOf("saved.rigband")});
    EXPECT_EQ(salvaged.status, 3) << salvaged.err.toStdString();
    EXPECT_TRUE(salvaged.err.contains("1 fact in this file is not as Rigband saved it."));
    EXPECT_EQ(run({"check", pathOf("saved.rigband")}).status, 3);
    write(at("empty.rigband"), "");
    const Answer nothing = run({"salvage", pathOf("empty.rigband"), pathOf("none.rigband")});
    EXPECT_EQ(nothing.status, 1);
    EXPECT_TRUE(nothing.err.contains("Nothing could be read in")) << nothing.err.toStdString();
}

TEST_F(File, RemovesWhatADeadRunLeftBehindAlsoWhereItIsRefused)
{
    const pid_t dead = ::fork();
    if (dead == 0)
        ::_exit(0);
    ::waitpid(dead, nullptr, 0);
    const std::string own = makingName(at("saved.rigband")); // with the mark of this computer
    const std::string number = std::to_string(::getpid());
    std::string left = own;
    left.replace(left.find(".making-" + number) + 8, number.size(), std::to_string(dead));
    const auto refuse = [&](const QStringList& arguments) {
        write(left, "SQLite format 3");
        EXPECT_EQ(run(arguments).status, 1);
        EXPECT_FALSE(fs::exists(left)) << arguments.front().toStdString();
    };
    write(at("saved.rigband"), "there");
    refuse({"salvage", file(), pathOf("saved.rigband")});
    write(at("couplings.csv"), "there");
    refuse({"export", file(), "--csv", pathOf("")});
}

TEST_F(File, TellsOfADocumentWithoutFactsThatNothingIsInIt)
{
    const std::string empty = at("empty.rigband");
    static_cast<void>(must(StoreFile::open(empty, OpenAs::New, store.clock())));
    const Answer out = run({"export", QString::fromStdString(empty), "--json", pathOf("empty.json")});
    EXPECT_TRUE(out.out.contains("in which no fact has been saved yet")) << out.out.toStdString();
    const Answer in = run({"import", pathOf("again.rigband"), "--json", pathOf("empty.json")});
    EXPECT_EQ(in.status, 0);
    EXPECT_TRUE(in.out.contains("the document holds no fact")) << in.out.toStdString();
    EXPECT_FALSE(in.out.contains(" 0 facts"));
}

TEST_F(File, SaysThatADayIsStillToCome)
{
    for (const QStringList& days :
         {QStringList{"report", "--from", "2099-01-01"}, QStringList{"report", "--to", "2099-01-01"},
          QStringList{"record", "--day", "2099-01-01"}}) {
        const Answer answer =
            run(QStringList{days[0], file(), "--airframe", "QX-17", "--out", pathOf("x.pdf")} + days.mid(1));
        EXPECT_EQ(answer.status, 2);
        EXPECT_TRUE(answer.err.contains("still to come")) << answer.err.toStdString();
    }
    EXPECT_TRUE(run({"--version"}).out.startsWith("rigband-file "));
    EXPECT_EQ(run({"--polish"}).status, 2);
}

} // namespace
} // namespace rig::test
