// The demonstration is the same in every language: the same facts, days and figures, and all its words.

#include "core/demo/demo.h"
#include "core/store/connection.h"
#include "core/store/every_shape.h"
#include "core/store/tables.h"
#include "tests/support/temp_store.h"

#include <QFile>
#include <QRegularExpression>

#include <algorithm>
#include <gtest/gtest.h>
#include <map>
#include <set>

using namespace rig;
using namespace rig::test;
using demo::Language;

namespace {

using Cells = QStringList;              // of one row
using Rows = std::vector<Cells>;        // in the order of their ids
using Tables = std::map<QString, Rows>; // the first row of each: the names of its columns

// Texts that are the same in every language: what people, airframes and gauges are called.
const std::set<QString> kStays{"person.name",   "person.phone",       "airframe.registration",
                               "airframe.type", "airframe.serial",    "airframe.call_name",
                               "gauge.name",    "airframe.call_phone"};

QString toldAs(const QVariant& cell)
{
    return cell.typeId() == QMetaType::QByteArray ? QString::fromLatin1(cell.toByteArray().toHex())
                                                  : cell.toString();
}

Rows rowsOf(StoreFile::Connection& file, const QString& table)
{
    Rows rows(1);
    must(file.each(QString("SELECT name FROM pragma_table_info('%1') ORDER BY cid").arg(table), {},
                   [&rows](Row& row) { rows.front() << QString::fromStdString(row.text()); }));
    must(file.each(QString("SELECT * FROM %1 ORDER BY 1, 2").arg(table), {}, [&rows](Row& row) {
        Cells cells;
        for (int i = 0; i < rows.front().size(); ++i)
            cells << toldAs(row.raw(i));
        rows.push_back(cells);
    }));
    return rows;
}

DrawnPhoto sameForAll(const Coupling&, PhotoOf)
{
    return {{{"drawn"}}, 640, 480};
}

const Tables& toldIn(Language language)
{
    static std::map<Language, Tables> all;
    Tables& tables = all[language];
    if (!tables.empty())
        return tables;
    TempStore store;
    store.clock().set(dayOf(2026, 11, 1));
    must(buildDemo(store.file(), language, sameForAll));
    for (const FactTable& table : kFactTables)
        tables[table.name] = rowsOf(store.file().connection(), table.name);
    for (const char* table : kChainTables)
        tables[table] = rowsOf(store.file().connection(), table);
    return tables;
}

// Whether people say something there, in words of their own.
bool isText(const QString& table, const QString& column)
{
    const FactShape* shape = shapeOfTable(table.toStdString());
    return shape && std::ranges::any_of(shape->columns, [&column](const ColumnInfo& one) {
               return one.name == column && one.storage == Storage::Text;
           });
}

bool isOfTheChain(const QString& table)
{
    return std::ranges::find(kChainTables, table.toStdString()) != kChainTables.end();
}

// A comma or a point, whichever the language writes.
QStringList figuresIn(const QString& text)
{
    static const QRegularExpression kFigure{QStringLiteral("\\d+(?:[.,]\\d+)?")};
    QStringList figures;
    for (auto match = kFigure.globalMatch(text); match.hasNext();)
        figures << match.next().captured().replace(',', '.');
    return figures;
}

// Each text of the file, in `table.column`, with what the English one says there.
struct Said
{
    QString where;
    QString english;
    QString text;
};

std::vector<Said> saidIn(Language language)
{
    std::vector<Said> all;
    for (const auto& [table, english] : toldIn(Language::English)) {
        const Rows& other = toldIn(language).at(table);
        for (std::size_t row = 1; row < std::min(english.size(), other.size()); ++row)
            for (qsizetype i = 0; i < english.front().size(); ++i)
                if (isText(table, english.front()[i]) && !english[row][i].isEmpty())
                    all.push_back({table + '.' + english.front()[i], english[row][i], other[row][i]});
    }
    return all;
}

QRegularExpression forbiddenIn(Language language)
{
    const std::string code{demo::codeOf(language)};
    const QString suffix = language == Language::English ? "" : QString::fromStdString('_' + code);
    QFile file{QStringLiteral(RIG_TEST_DATA "/../house/forbidden_words%1.txt").arg(suffix)};
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << file.fileName().toStdString();
    const QString words = QString::fromUtf8(file.readAll()).trimmed().replace('\n', '|');
    return QRegularExpression{QStringLiteral("\\b(%1)\\b").arg(words),
                              QRegularExpression::CaseInsensitiveOption |
                                  QRegularExpression::UseUnicodePropertiesOption};
}

constexpr std::array kTranslated{Language::German, Language::French};

} // namespace

TEST(DemoLanguages, AreKnownByTheirCodesAndAnyOtherIsEnglish)
{
    for (const Language language : demo::kLanguages)
        EXPECT_EQ(demo::languageOf(demo::codeOf(language)), language);
    EXPECT_EQ(demo::languageOf("pt"), Language::English);
    EXPECT_EQ(demo::languageOf(""), Language::English);
}

TEST(DemoLanguages, DifferInWordsAndInNothingElse)
{
    for (const Language language : kTranslated) {
        int cells = 0;
        for (const auto& [table, english] : toldIn(Language::English)) {
            const Rows& other = toldIn(language).at(table);
            ASSERT_EQ(english.size(), other.size()) << table.toStdString();
            if (isOfTheChain(table)) // digests of the words
                continue;
            for (std::size_t row = 0; row < english.size(); ++row)
                for (qsizetype i = 0; i < english.front().size(); ++i) {
                    const QString& column = english.front()[i];
                    if (isText(table, column) && row > 0)
                        continue;
                    ++cells;
                    ASSERT_EQ(english[row][i].toStdString(), other[row][i].toStdString())
                        << (table + '.' + column).toStdString() << " of row " << row;
                }
        }
        EXPECT_GT(cells, 100'000);
    }
}

TEST(DemoLanguages, LeaveNoSayingInEnglish)
{
    for (const Language language : kTranslated) {
        const std::vector<Said> all = saidIn(language);
        EXPECT_GT(all.size(), 400U);
        for (const Said& said : all)
            if (kStays.contains(said.where))
                EXPECT_EQ(said.text.toStdString(), said.english.toStdString()) << said.where.toStdString();
            else
                EXPECT_NE(said.text.toStdString(), said.english.toStdString()) << said.where.toStdString();
    }
}

TEST(DemoLanguages, SayTheSameFiguresAndNames)
{
    static const QRegularExpression kName{QStringLiteral("[A-Z]\\. [A-Z][a-z]+|QX-\\d+")};
    const auto namesIn = [](const QString& text) {
        std::set<QString> names;
        for (auto match = kName.globalMatch(text); match.hasNext();)
            names.insert(match.next().captured());
        return names;
    };
    for (const Language language : kTranslated)
        for (const Said& said : saidIn(language)) {
            EXPECT_TRUE(figuresIn(said.text) == figuresIn(said.english)) << said.text.toStdString();
            EXPECT_TRUE(namesIn(said.text) == namesIn(said.english)) << said.text.toStdString();
        }
}

TEST(DemoLanguages, NeverDecide)
{
    for (const Language language : demo::kLanguages) {
        const QRegularExpression forbidden = forbiddenIn(language);
        for (const Said& said : saidIn(language))
            EXPECT_FALSE(forbidden.match(said.text).hasMatch()) << said.text.toStdString();
    }
}

TEST(DemoLanguages, BreakNoFrenchLineBeforeItsColon)
{
    for (const Said& said : saidIn(Language::French)) {
        static const QRegularExpression kBreaks{QStringLiteral("(?<!\\x{a0})[:;?!]|« |'")};
        EXPECT_FALSE(kBreaks.match(said.text).hasMatch()) << said.text.toStdString();
    }
}
