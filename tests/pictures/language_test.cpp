#include "app/wording/formats.h"
#include "app/wording/language.h"
#include "app/wording/verdict_words.h"

#include <QFile>

#include <gtest/gtest.h>

namespace rig {

namespace {

const QLocale kBritish{QLocale::English, QLocale::UnitedKingdom};
const QLocale kSwiss{QLocale::German, QLocale::Switzerland};

// What is said while the program speaks a language.
template <typename Says> auto spoken(const QString& code, const QLocale& system, Says says)
{
    const Speech speech{code, system};
    return says();
}

} // namespace

TEST(Language, TheOneThatWasChosenComesBeforeTheSystems)
{
    EXPECT_EQ(languageOf("fr", kSwiss), "fr");
    EXPECT_EQ(languageOf({}, kSwiss), "de");
    EXPECT_EQ(languageOf({}, QLocale{QLocale::Icelandic}), "en");
    EXPECT_EQ(languageOf("tlh", kSwiss), "de") << "a language that is spoken no more is as good as none";
}

TEST(Language, FiguresStandAsTheWordsDo)
{
    EXPECT_EQ(figuresOf("en", kSwiss).toString(0.45), "0.45") << "no comma beside English words";
    EXPECT_EQ(figuresOf("de", kBritish).toString(0.45), "0,45");
    EXPECT_EQ(figuresOf("de", kSwiss).toString(0.45), "0.45") << "as somebody in Switzerland writes German";
    EXPECT_EQ(figuresOf("fr", kBritish).toString(0.45), "0,45");
}

TEST(Language, EveryLanguageHasItsWordsInTheProgram)
{
    for (const Language& one : languages()) {
        const bool isThere = QFile::exists(QStringLiteral(":/languages/rigband_%1.qm").arg(one.code));
        EXPECT_EQ(isThere, one.code != "en") << one.name.toStdString();
    }
}

TEST(Language, AVerdictIsSaidInIt)
{
    const auto word = [] { return VerdictWords::word(Verdict::NearEdge); };
    const QString english = word();
    const QString german = spoken("de", kBritish, word);
    const QString french = spoken("fr", kBritish, word);
    EXPECT_EQ(german.toStdString(), "Nahe am Rand des Bandes");
    EXPECT_EQ(french.toStdString(), "Près du bord de la bande");
    EXPECT_EQ(word(), english) << "a language that is left takes its words along";
    EXPECT_EQ(QLocale{}.decimalPoint(), QStringLiteral("."));
}

TEST(Language, ADayIsWrittenAsItsReadersWriteIt)
{
    const auto day = [] { return Formats{}.day(Day{std::chrono::days{20574}}); };
    EXPECT_EQ(spoken("en", kSwiss, day).toStdString(), "1 May 2026");
    EXPECT_EQ(spoken("de", kBritish, day).toStdString(), "1. Mai 2026");
    EXPECT_EQ(spoken("fr", kBritish, day).toStdString(), "1 mai 2026");
}

TEST(Language, AnIntervalKeepsItsOrderAndItsFigures)
{
    const auto interval = [] { return Formats{}.interval({450_um, 505_um}); };
    EXPECT_EQ(spoken("de", kBritish, interval).toStdString(), "0,45–0,505 mm");
    EXPECT_EQ(spoken("fr", kBritish, interval).toStdString(), "0,45–0,505 mm");
}

} // namespace rig
