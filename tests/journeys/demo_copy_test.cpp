// The copy of the demonstration that a window opens, and what becomes of it.

#include "app/pages/usual_surfaces.h"
#include "app/window/demo_copy.h"
#include "app/window/session.h"
#include "app/wording/language.h"
#include "app/wording/lesson_picture_words.h"
#include "core/store/airframe_facts.h"
#include "tests/support/fixed_clock.h"
#include "tests/support/must.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>

#include <gtest/gtest.h>
#include <set>
#include <utime.h>

using namespace rig;
using namespace rig::test;

TEST(Demonstrations, GoAwayWithTheirSession)
{
    FixedClock clock;
    clock.set(dayOf(2026, 11, 2));
    QString folder;
    {
        const auto session = must(Session::openDemo(clock));
        EXPECT_TRUE(session->isDemo());
        folder = QFileInfo{QString::fromStdString(session->file().path())}.absolutePath();
        EXPECT_TRUE(QFileInfo::exists(folder));
        EXPECT_EQ(must(session->records().airframes()).size(), 3U);
        EXPECT_FALSE(must(session->records().learning(must(session->records().airframes()).front().id))
                         .photos.empty());
    }
    EXPECT_FALSE(QFileInfo::exists(folder));
}

TEST(Demonstrations, SpeakTheLanguageOfTheProgramAndNameSurfacesAsItDoes)
{
    FixedClock clock;
    clock.set(dayOf(2026, 11, 2));
    std::set<std::string> names;
    for (const Language& language : languages()) {
        const Speech speech{language.code};
        const auto session = must(Session::openDemo(clock));
        for (const Airframe& airframe : must(session->records().airframes())) {
            const AirframeFacts facts = must(factsOf(session->records(), airframe.id));
            names.insert(facts.couplings.front().name);
            EXPECT_TRUE(usualSurfaces(airframe.id, facts.couplings, facts.surfaces).empty())
                << "all are there by the names that this language has for them: "
                << language.code.toStdString();
            for (const Photo& photo : must(session->records().learning(airframe.id)).photos)
                EXPECT_EQ(photo.note, LessonPictureWords::drawnNotAPhoto().toStdString());
        }
    }
    EXPECT_EQ(names.size(), languages().size()) << "Left aileron, in each of them";
}

TEST(Demonstrations, LeftByKilledProgramsGoOnceTheyAreADayOld)
{
    constexpr int kNobody = 0x7ffffff0; // greater than any process's number
    const QTemporaryDir temporary;
    const auto made = [&temporary](const QString& name, int daysAgo) {
        const QString folder = temporary.filePath(name);
        QDir{}.mkpath(folder);
        QFile file{folder + "/demo.rigband"};
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.close();
        const time_t then = QDateTime::currentDateTime().addDays(-daysAgo).toSecsSinceEpoch();
        const utimbuf times{then, then};
        EXPECT_EQ(utime(folder.toLocal8Bit().constData(), &times), 0);
        return folder;
    };
    const QString old = made(QString("rigband-demo-%1-AbCdEf").arg(kNobody), 2);
    const QString young = made(QString("rigband-demo-%1-GhIjKl").arg(kNobody), 0);
    const QString running =
        made(QString("rigband-demo-%1-MnOpQr").arg(QCoreApplication::applicationPid()), 2);
    const QString another = made("rigband-demo-mine", 2);
    const QString aim = made("somebody's", 2);
    EXPECT_TRUE(QFile::link(aim, temporary.filePath(QString("rigband-demo-%1-StUvWx").arg(kNobody))));
    removeOldDemos(temporary.path());
    EXPECT_FALSE(QFileInfo::exists(old));
    for (const QString& stays : {young, running, another, aim, aim + "/demo.rigband"})
        EXPECT_TRUE(QFileInfo::exists(stays)) << stays.toStdString();
}
