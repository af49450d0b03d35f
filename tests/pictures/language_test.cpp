#include "app/wording/chain_words.h"
#include "app/wording/formats.h"
#include "app/wording/language.h"
#include "app/wording/stored_words.h"
#include "app/wording/verdict_words.h"
#include "core/store/every_shape.h"

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

TEST(Language, WhatAFactSaysIsSaidInItAndNotInTheWordsOfTheFile)
{
    std::vector<std::pair<std::string, ColumnInfo>> all;
    const auto take = [&all](const char* told, const std::vector<ColumnInfo>& columns) {
        for (const ColumnInfo& column : columns)
            all.emplace_back(told, column);
    };
    for (const FactShape* shape : everyShape()) {
        take(shape->table, shape->columns);
        if (shape->children)
            take(shape->table, {shape->children->value});
    }
    take("reading", factShape<Shown>().columns); // told with the reading
    take("photo", factShape<PhotoImage>().columns);
    int words = 0;
    for (const auto& [table, column] : all) {
        const std::string_view name = column.name;
        if (name == "id" || name == "subject" || name.starts_with("stated_") || name.ends_with("_offset"))
            continue; // never told
        SCOPED_TRACE(table + '.' + column.name);
        EXPECT_FALSE(StoredWords::column(column.name).isEmpty());
        EXPECT_EQ(StoredWords::areWords(table, column.name), column.storage == Storage::Word);
        const bool isYesOrNo =
            column.storage == Storage::Integer && column.range.least == 0 && column.range.most == 1;
        EXPECT_EQ(!StoredWords::yesOrNo(column.name, "1").isEmpty(), isYesOrNo);
        for (int i = 0; column.word && !column.word(i).empty(); ++i, ++words)
            EXPECT_FALSE(StoredWords::word(table, column.name, column.word(i)).isEmpty()) << column.word(i);
    }
    EXPECT_GT(words, 150);

    FaultyFact fact;
    fact.fault = ChainFault::Changed;
    fact.table = "reading";
    using Is = FactValue::Is;
    fact.says = {{"technique", {{Is::Text, "no-leaf-enters"}}},
                 {"state", {{Is::Text, "part-seated"}}},
                 {"turn", {{Is::Text, "second"}}},
                 {"note", {{Is::Text, "part-seated"}}},
                 {"size_um", {{Is::WholeNumber, "50"}, {Is::WholeNumber, "1255"}}}};
    const auto says = [&fact] { return ChainWords::says(fact).toStdString(); };
    EXPECT_EQ(spoken("de", kBritish, says),
              "wie gemessen wurde: kein Blatt geht hinein; Zustand: halb eingerastet; Durchgang: zweite "
              "Person; Notiz: part-seated; Blätter: 0,05 mm, 1,255 mm");
    fact.says = {{"in_use", {{Is::WholeNumber, "0"}}},
                 {"jpeg", {{Is::Bytes, "4711"}}},
                 {"day", {{Is::Text, "2026-05-02"}}}};
    EXPECT_EQ(spoken("fr", kBritish, says),
              "en service\u00a0: non; image\u00a0: 4\u202f711 octets; jour\u00a0: 2 mai 2026");
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
