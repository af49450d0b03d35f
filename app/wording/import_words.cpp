#include "app/wording/import_words.h"

#include "app/wording/formats.h"
#include "app/wording/sentence_parts.h"

#include <QStringList>

#include <algorithm>
#include <array>
#include <cstddef>
#include <iterator>
#include <utility>

namespace rig {

namespace {

// A swallowed line can be as long as the table.
constexpr int kLongestShown = 80;

// %1 the line, %2 what stands there, %3 the column, %4 the words that may stand there or what the file says.
struct Form
{
    RowProblem problem;
    const char* sentence;
};

constexpr Form kForms[] = {
    {RowProblem::Empty,
     QT_TRANSLATE_NOOP(
         "ImportWords",
         "The table is empty. Name the columns in its first line and write a line for each thing below.")},
    {RowProblem::NoRows,
     QT_TRANSLATE_NOOP(
         "ImportWords",
         "Line %1 names the columns, but no reading stands below it. Write one line for each reading.")},
    {RowProblem::TableTooLarge,
     QT_TRANSLATE_NOOP(
         "ImportWords",
         "The table is larger than what is read at once: 20 MB and 200,000 lines. Part it into several.")},
    {RowProblem::NotUtf8,
     QT_TRANSLATE_NOOP("ImportWords",
                       "Line %1 holds signs that are not UTF-8. Save the table anew as UTF-8 text.")},
    {RowProblem::MixedSeparators,
     QT_TRANSLATE_NOOP("ImportWords",
                       "Line %1 has both commas and semicolons: “%2”. Part all columns by one of the two.")},
    {RowProblem::MissingColumn,
     QT_TRANSLATE_NOOP("ImportWords", "Line %1 names no column “%2”, and such a table needs one. Add it.")},
    {RowProblem::UnknownColumn,
     QT_TRANSLATE_NOOP(
         "ImportWords",
         "Line %1 names a column “%2” that such a table does not have. Rename it or take it out.")},
    {RowProblem::ColumnTwice,
     QT_TRANSLATE_NOOP("ImportWords", "Line %1 names the column “%2” twice. Take one of them out.")},
    {RowProblem::UnclosedQuote,
     QT_TRANSLATE_NOOP("ImportWords", "A quotation mark opens in line %1 and nothing closes it, so nothing "
                                      "after it could be read: “%2”. Close it, or take it out.")},
    {RowProblem::StrayQuote,
     QT_TRANSLATE_NOOP("ImportWords", "Line %1 has a quotation mark in the middle of a field: “%2”. Put the "
                                      "whole field in quotation marks and write the one inside twice.")},
    {RowProblem::WrongFieldCount,
     QT_TRANSLATE_NOOP("ImportWords",
                       "Line %1 has more or fewer fields than the first line has columns: “%2”. Write one "
                       "field for each column, empty where nothing is known.")},
    {RowProblem::DecimalComma,
     QT_TRANSLATE_NOOP("ImportWords",
                       "Line %1 has a figure with a decimal comma in a table parted by commas: “%2”. Write a "
                       "point in the figure, or part the whole table by semicolons.")},
    {RowProblem::NoAirframe,
     QT_TRANSLATE_NOOP("ImportWords", "Line %1 names no airframe. Write its registration.")},
    {RowProblem::NoCoupling,
     QT_TRANSLATE_NOOP("ImportWords", "Line %1 names no coupling. Write its name as it stands in Set up.")},
    {RowProblem::NoPerson,
     QT_TRANSLATE_NOOP("ImportWords", "Line %1 does not say who measured. Write the name.")},
    {RowProblem::NoDay,
     QT_TRANSLATE_NOOP(
         "ImportWords",
         "Line %1 has no date in the column %3. Write year, month and day, such as 2026-05-02.")},
    {RowProblem::NotADay,
     QT_TRANSLATE_NOOP("ImportWords", "Line %1 has “%2” in the column %3, where a date belongs. Write year, "
                                      "month and day, such as 2026-05-02.")},
    {RowProblem::NotATime,
     QT_TRANSLATE_NOOP(
         "ImportWords",
         "Line %1 has “%2” in the column %3, where a time belongs. Write hours and minutes, such as 09:40.")},
    {RowProblem::NoGap,
     QT_TRANSLATE_NOOP(
         "ImportWords",
         "Line %1 does not say which leaf entered or which did not. Write at least one of them.")},
    {RowProblem::NotFinite,
     QT_TRANSLATE_NOOP("ImportWords",
                       "Line %1 has “%2” in the column %3, the mark of a figure that could not be worked "
                       "out. Write the figure that was read, or take the line out.")},
    {RowProblem::NotANumber,
     QT_TRANSLATE_NOOP("ImportWords", "Line %1 has “%2” in the column %3, which is not a length. Write "
                                      "millimetres, figures only, such as 0.60.")},
    {RowProblem::TwoSeparators,
     QT_TRANSLATE_NOOP("ImportWords", "Line %1 has “%2” in the column %3, with more than one point or comma. "
                                      "Write one of them only, such as 0.60.")},
    {RowProblem::TooFine,
     QT_TRANSLATE_NOOP("ImportWords", "Line %1 has “%2” in the column %3, finer than a micrometre. Write "
                                      "three figures after the point at most.")},
    {RowProblem::Negative,
     QT_TRANSLATE_NOOP("ImportWords",
                       "Line %1 has “%2” in the column %3, below zero. Write the length as it was read.")},
    {RowProblem::TooWide,
     QT_TRANSLATE_NOOP("ImportWords", "Line %1 has “%2” in the column %3, wider than any gap, 10 mm at most. "
                                      "Write the figure in millimetres.")},
    {RowProblem::Reversed,
     QT_TRANSLATE_NOOP("ImportWords", "Line %1 says that a leaf entered which is thicker than one that did "
                                      "not: “%2”. Look over both figures.")},
    {RowProblem::SameBounds,
     QT_TRANSLATE_NOOP("ImportWords", "Line %1 says that the same leaf entered and did not: “%2”. Write the "
                                      "next thicker leaf, the one that did not enter.")},
    {RowProblem::UnknownState,
     QT_TRANSLATE_NOOP("ImportWords", "Line %1 has the state “%2”. Write “locked”, “part-seated” or "
                                      "“baseline”, or leave it empty for “locked”.")},
    {RowProblem::NotARepeat,
     QT_TRANSLATE_NOOP("ImportWords", "Line %1 has “%2” in the column repeat. Write 2 for the second reading "
                                      "that is the same, 3 for the third, or leave the field empty.")},
    {RowProblem::UnknownAside,
     QT_TRANSLATE_NOOP("ImportWords", "Line %1 has “%2” in the column set_aside. Write “corrected” or "
                                      "“struck” and the line is not taken in, or leave the field empty.")},
    {RowProblem::FutureDay,
     QT_TRANSLATE_NOOP("ImportWords", "Line %1 has the date %2, which is still to come. Look over the date, "
                                      "and the clock of this computer.")},
    {RowProblem::UnknownAirframe,
     QT_TRANSLATE_NOOP(
         "ImportWords",
         "Line %1 names the airframe “%2”, which is not in the file. Look over the registration, or add the "
         "airframe first: in Set up, or with its couplings in a table.")},
    {RowProblem::UnknownCoupling,
     QT_TRANSLATE_NOOP("ImportWords",
                       "Line %1 names the coupling “%2”, which this airframe does not have. Look over the "
                       "name, or add the coupling first: in Set up, or in a table.")},
    {RowProblem::NoFitting,
     QT_TRANSLATE_NOOP(
         "ImportWords",
         "Line %1 names the coupling “%2”, for which no fitting was begun. Begin one in Set up first.")},
    {RowProblem::NothingToMeasure,
     QT_TRANSLATE_NOOP("ImportWords", "Line %1 names the coupling “%2”, which has no gap to measure. Take "
                                      "the line out, or change what kind of coupling it is in Set up.")},
    {RowProblem::UnknownPerson,
     QT_TRANSLATE_NOOP("ImportWords",
                       "Line %1 names “%2” in the column %3, and nobody of that name is in the file. Look "
                       "over the name, or add the person first: in Set up, or in a table.")},
    {RowProblem::UnknownGauge,
     QT_TRANSLATE_NOOP("ImportWords", "Line %1 names the leaf set or gauge “%2”, which is not in the file. "
                                      "Look over the name, or add it first: in Set up, or in a table.")},
    {RowProblem::AlreadyInFile,
     QT_TRANSLATE_NOOP("ImportWords",
                       "Line %1 is a reading of “%2” that the file holds already. Take the line out; if it "
                       "was truly read again with the same result, number it in the column repeat.")},
    {RowProblem::TwiceInTable,
     QT_TRANSLATE_NOOP(
         "ImportWords",
         "Line %1 is a reading of “%2” that stands further up in this table too. Take the line out; if it "
         "was truly read again with the same result, number it in the column repeat.")},
    {RowProblem::RepeatSkips,
     QT_TRANSLATE_NOOP(
         "ImportWords",
         "Line %1 has a number in the column repeat, and the reading of “%2” that it repeats is neither "
         "in the file nor further up in the table. A repeated reading is the same in coupling, day, both "
         "figures, person, gauge and state. Where one of them differs, leave repeat empty; else count 2, "
         "3, 4 and leave out none.")},
    {RowProblem::SecondIsPerson,
     QT_TRANSLATE_NOOP("ImportWords", "Line %1 names “%2” both in the column person and in the column "
                                      "second. Write in second who stood by, or leave it empty.")},
    {RowProblem::NothingThere,
     QT_TRANSLATE_NOOP("ImportWords",
                       "Line %1 has nothing in the column %3, and it is needed there. Write it.")},
    {RowProblem::TooLong,
     QT_TRANSLATE_NOOP(
         "ImportWords",
         "Line %1 has a text in the column %3 that is longer than 100,000 bytes: “%2”. Shorten it.")},
    {RowProblem::Invisible,
     QT_TRANSLATE_NOOP("ImportWords", "Line %1 has a character in the column %3 that nobody sees, such as a "
                                      "mark for the direction of writing: “%2”. Write the text anew.")},
    {RowProblem::NameTooLong,
     QT_TRANSLATE_NOOP("ImportWords",
                       "Line %1 has a name in the column %3 that is longer than 1,000 bytes. Shorten it.")},
    {RowProblem::NotAWord,
     QT_TRANSLATE_NOOP("ImportWords", "Line %1 has “%2” in the column %3. Write one of these: %4.")},
    {RowProblem::PartsDoNotFit,
     QT_TRANSLATE_NOOP("ImportWords", "Line %1 has “%2” in the column %3, which does not go with the kind "
                                      "“%4”. Leave the field empty, or write another kind.")},
    {RowProblem::NotAPlace,
     QT_TRANSLATE_NOOP(
         "ImportWords",
         "Line %1 has “%2” in the column %3, which is no place on the plan. Write plan_x from -1, the left "
         "wing tip, to 1, and plan_y from 0, the nose, to 1; or leave both empty.")},
    {RowProblem::NoSizes,
     QT_TRANSLATE_NOOP("ImportWords", "Line %1 has no sizes in the column %3. Write them in millimetres, "
                                      "such as 0.05; 0.10; 0.15 or 0.05-1.00 step 0.05.")},
    {RowProblem::NotSizes,
     QT_TRANSLATE_NOOP("ImportWords",
                       "Line %1 has “%2” in the column %3, which is no list of sizes. Write each size once, "
                       "in millimetres and above zero, such as 0.05; 0.10; 0.15 or 0.05-1.00 step 0.05.")},
    {RowProblem::NotTwoSizes,
     QT_TRANSLATE_NOOP("ImportWords", "Line %1 has “%2” in the column %3. Write the two ends of a go/no-go "
                                      "block, the thin one and the thick one.")},
    {RowProblem::SizesOfTaper,
     QT_TRANSLATE_NOOP("ImportWords",
                       "Line %1 has “%2” in the column %3, and a taper gauge has no sizes. Write how fine it "
                       "reads in the column resolution_mm, or write another kind.")},
    {RowProblem::ResolutionOfSizes,
     QT_TRANSLATE_NOOP("ImportWords", "Line %1 has “%2” in the column %3, which belongs to a taper gauge "
                                      "only. Leave the field empty, or write “taper” in the column kind.")},
    {RowProblem::ZeroLength,
     QT_TRANSLATE_NOOP("ImportWords", "Line %1 has “%2” in the column %3. Write a length above zero, in "
                                      "millimetres, or leave the field empty.")},
    {RowProblem::KnownGapUnread,
     QT_TRANSLATE_NOOP("ImportWords", "Line %1 says what was read on a gap of known width and not how wide "
                                      "it is. Write the width in the column %3.")},
    {RowProblem::CheckWithoutDay,
     QT_TRANSLATE_NOOP("ImportWords",
                       "Line %1 has “%2” in the column %3, and no day in the column check_date. Write the "
                       "day of the check, or leave out what is said of it.")},
    {RowProblem::DoubtAfterCheck,
     QT_TRANSLATE_NOOP("ImportWords", "Line %1 has the date %2 in the column %3, later than the check that "
                                      "found it. Write the day of the check, or an earlier one.")},
    {RowProblem::NothingTried,
     QT_TRANSLATE_NOOP("ImportWords",
                       "Line %1 does not say in either column, along or across, whether play was felt. Write "
                       "“felt” or “none” in at least one of them, or take the line out.")},
    {RowProblem::MeasuredUnfelt,
     QT_TRANSLATE_NOOP("ImportWords", "Line %1 has “%2” in the column %3, and the column %4 does not say "
                                      "that play was felt. Write “felt” there, or leave the figure out.")},
    {RowProblem::DoneWithoutFinding,
     QT_TRANSLATE_NOOP("ImportWords",
                       "Line %1 has “%2” in the column %3, and the column %4 does not say “finding”. Write "
                       "“finding” there, or put what was done into the note.")},
    {RowProblem::SaysOtherwise,
     QT_TRANSLATE_NOOP(
         "ImportWords",
         "Line %1 has “%2” in the column %3, where “%4” is known already. A table changes nothing that is "
         "known: write the same or leave the field empty, and change it in Set up.")},
    {RowProblem::SaysMore,
     QT_TRANSLATE_NOOP("ImportWords",
                       "Line %1 has “%2” in the column %3, and the file knows the same without it. A table "
                       "changes nothing that is known: leave the field empty, and add this in Set up.")},
    {RowProblem::NoFittingDay,
     QT_TRANSLATE_NOOP("ImportWords",
                       "Line %1 does not say when a fitting of “%2” began, and no reading of it comes in "
                       "that would say. Write the day in the column %3, such as 2026-05-02.")},
    {RowProblem::FittingTwice,
     QT_TRANSLATE_NOOP(
         "ImportWords",
         "Line %1 begins a fitting on %2 that stands further up in this table too. Take the line out.")},
    {RowProblem::FittingTooEarly,
     QT_TRANSLATE_NOOP("ImportWords", "Line %1 begins a fitting on %2, before the last one in the file, %4. "
                                      "Look over the day in the column %3.")},
};

QString shown(const std::string& text)
{
    const QString whole = QString::fromStdString(text).simplified();
    return whole.size() <= kLongestShown ? whole : whole.left(kLongestShown) + QChar{0x2026};
}

// Each part once in the words, and none in another part.
QString filled(const QString& words, const std::array<QString, 4>& parts)
{
    QString sentence;
    for (qsizetype at = 0; at < words.size(); ++at) {
        const int number =
            words[at] == QLatin1Char('%') && at + 1 < words.size() ? words[at + 1].digitValue() : 0;
        if (number >= 1 && number <= 4) {
            sentence += parts[static_cast<std::size_t>(number - 1)];
            ++at;
        } else {
            sentence += words[at];
        }
    }
    return sentence;
}

} // namespace

QString ImportWords::sentence(const BadRow& row)
{
    const QString line = Formats{}.count(row.line);
    if (row.problem == RowProblem::UnknownColumn && shown(row.text).isEmpty())
        return tr("Line %1 has a column without a name. Name it, or take it out.").arg(line);
    const auto* const form = std::ranges::find(kForms, row.problem, &Form::problem);
    if (form == std::end(kForms))
        return tr("Line %1 could not be taken. Look it over.").arg(line);
    const QString words = tr(form->sentence);
    const std::array parts{line, shown(row.text), QString::fromStdString(row.column), shown(row.instead)};
    return filled(words, parts);
}

QString ImportWords::inTable(const QString& table, const BadRow& row)
{
    return tr("%1: %2", "file name, sentence").arg(table, sentence(row));
}

QString ImportWords::moreOfTheSame(int rows)
{
    return tr("%n more line(s) have the same to put right.", nullptr, rows);
}

QString ImportWords::nothingImported(int problems)
{
    if (problems == 1)
        return tr("Nothing was imported. Put right what is named above, then import everything again.");
    return tr("Nothing was imported. Put right the %1 things named above, then import everything again.")
        .arg(Formats{}.count(problems));
}

QString ImportWords::added(const Imported& imported)
{
    const std::pair<int, QString> kinds[] = {
        {imported.airframes, tr("Airframes: %1.")},
        {imported.couplings, tr("Couplings: %1.")},
        {imported.fittings, tr("Fittings: %1.")},
        {imported.people, tr("People: %1.")},
        {imported.gauges, tr("Leaf sets and gauges: %1.")},
        {imported.gaugeChecks, tr("Gauge checks: %1.")},
        {imported.events, tr("Events: %1.")},
        {imported.jointPlays, tr("Joint plays: %1.")},
    };
    QStringList sentences{tr("Added.")};
    for (const auto& [count, words] : kinds)
        if (count > 0)
            sentences.append(words.arg(Formats{}.count(count)));
    return sentences.join(QLatin1Char(' '));
}

QString ImportWords::thereAlready(int rows)
{
    return tr("%n row(s) not taken in, as the file says the same already.", nullptr, rows);
}

QString ImportWords::outside(int readings)
{
    return readings == 1 ? tr("One of them lies outside its coupling’s band, and no question was opened for "
                              "it. Open the file and look at Before the annual.")
                         : tr("%1 of them lie outside their coupling’s band, and no question was opened for "
                              "them. Open the file and look at Before the annual.")
                               .arg(Formats{}.count(readings));
}

QString ImportWords::sameDay(int riggings, const std::set<Day>& days)
{
    constexpr std::size_t kMostNamed = 6;
    std::vector<Day> named{days.begin(), days.end()};
    named.resize(std::min(named.size(), kMostNamed));
    const QString on = SentenceParts::days(named);
    const QString which =
        named.size() == days.size() ? on : tr("%1 and later days", "the first of many days").arg(on);
    return riggings == 1 ? tr("On %1 the file has a rigging of that airframe already. Open the file and say "
                              "whether the two are one and the same (Ctrl+8).")
                               .arg(which)
                         : tr("On %1 the file has riggings of these airframes already, %2 in all. Open the "
                              "file and say of each whether the two are one and the same (Ctrl+8).")
                               .arg(which, Formats{}.count(riggings));
}

QString ImportWords::nothingNew() { return tr("There is nothing in it that the file does not say already."); }

QString ImportWords::imported(int readings, int records)
{
    const QString count = Formats{}.count(readings);
    if (readings == 1)
        return records == 0 ? tr("One reading was imported.")
                            : tr("One reading was imported, with its rigging.");
    if (records == 0)
        return tr("%1 readings were imported.").arg(count);
    if (records == 1)
        return tr("%1 readings were imported, with one rigging.").arg(count);
    return tr("%1 readings were imported, with %2 riggings.").arg(count, Formats{}.count(records));
}

QString ImportWords::passedOver(int rows)
{
    return tr("%n row(s) not taken in, as the reading was corrected or struck.", nullptr, rows);
}

QString ImportWords::notSecured(int rows)
{
    return tr("%n row(s) not taken in, as the joint was found not secured: the answer that says so stands in "
              "its rigging, not in the table.",
              nullptr, rows);
}

} // namespace rig
