#include "app/wording/import_words.h"

#include "app/wording/formats.h"

#include <algorithm>
#include <iterator>

namespace rig {

namespace {

// A swallowed line can be as long as the table.
constexpr int kLongestShown = 80;

// %1 the line, %2 what stands there, %3 the column.
struct Form
{
    RowProblem problem;
    const char* sentence;
};

#define WORDS(text) QT_TRANSLATE_NOOP("rig::ImportWords", text)

constexpr Form kForms[] = {
    {RowProblem::Empty,
     WORDS(
         "The table is empty. Name the columns in its first line and write one reading in each line below.")},
    {RowProblem::NoRows,
     WORDS("Line %1 names the columns, but no reading stands below it. Write one line for each reading.")},
    {RowProblem::NotUtf8,
     WORDS("Line %1 holds signs that are not UTF-8. Save the table anew as UTF-8 text.")},
    {RowProblem::MixedSeparators,
     WORDS("Line %1 has both commas and semicolons: “%2”. Part all columns by one of the two.")},
    {RowProblem::MissingColumn, WORDS("Line %1 names no column “%2”, and every table needs one. Add it.")},
    {RowProblem::UnknownColumn,
     WORDS("Line %1 names a column “%2” that a table of readings does not have. Rename it or take it out.")},
    {RowProblem::ColumnTwice, WORDS("Line %1 names the column “%2” twice. Take one of them out.")},
    {RowProblem::UnclosedQuote,
     WORDS(
         "A quotation mark opens in line %1 and nothing closes it, so nothing after it could be read: “%2”. "
         "Close it, or take it out.")},
    {RowProblem::StrayQuote, WORDS("Line %1 has a quotation mark in the middle of a field: “%2”. Put the "
                                   "whole field in quotation marks "
                                   "and write the one inside twice.")},
    {RowProblem::WrongFieldCount,
     WORDS("Line %1 has more or fewer fields than the first line has columns: “%2”. Write one field for each "
           "column, empty where nothing is known.")},
    {RowProblem::DecimalComma,
     WORDS(
         "Line %1 has a figure with a decimal comma in a table parted by commas: “%2”. Write a point in the "
         "figure, or part the whole table by semicolons.")},
    {RowProblem::NoAirframe, WORDS("Line %1 names no airframe. Write its registration.")},
    {RowProblem::NoCoupling, WORDS("Line %1 names no coupling. Write its name as it stands in Set up.")},
    {RowProblem::NoPerson, WORDS("Line %1 does not say who measured. Write the name.")},
    {RowProblem::NoDay, WORDS("Line %1 has no date. Write year, month and day, such as 2026-05-02.")},
    {RowProblem::NotADay,
     WORDS("Line %1 has “%2” where a date belongs. Write year, month and day, such as 2026-05-02.")},
    {RowProblem::NoGap,
     WORDS("Line %1 does not say which leaf entered or which did not. Write at least one of them.")},
    {RowProblem::NotFinite, WORDS("Line %1 has “%2” in %3, the mark of a figure that could not be worked "
                                  "out. Write the figure that was "
                                  "read, or take the line out.")},
    {RowProblem::NotANumber,
     WORDS("Line %1 has “%2” in %3, which is not a length. Write millimetres, figures only, such as 0.60.")},
    {RowProblem::TwoSeparators,
     WORDS(
         "Line %1 has “%2” in %3, with more than one point or comma. Write one of them only, such as 0.60.")},
    {RowProblem::TooFine,
     WORDS("Line %1 has “%2” in %3, finer than a micrometre. Write three figures after the point at most.")},
    {RowProblem::Negative, WORDS("Line %1 has “%2” in %3, below zero. Write the length as it was read.")},
    {RowProblem::TooWide,
     WORDS("Line %1 has “%2” in %3, wider than any gap, 10 mm at most. Write the figure in millimetres.")},
    {RowProblem::Reversed, WORDS("Line %1 says that a leaf entered which is thicker than one that did not: "
                                 "“%2”. Look which of the two "
                                 "was meant.")},
    {RowProblem::SameBounds, WORDS("Line %1 says that the same leaf entered and did not: “%2”. Write the "
                                   "next thicker leaf, the one that "
                                   "did not enter.")},
    {RowProblem::UnknownState,
     WORDS(
         "Line %1 has the state “%2”. Write locked, part-seated or baseline, or leave it empty for locked.")},
    {RowProblem::NotARepeat, WORDS("Line %1 has “%2” in repeat. Write 2 for the second reading that is the "
                                   "same, 3 for the third, or leave "
                                   "it empty.")},
    {RowProblem::UnknownAside,
     WORDS("Line %1 has “%2” in set_aside. Write corrected or struck, and the line is "
           "left out, or leave it empty.")},
    {RowProblem::FutureDay, WORDS("Line %1 has the date %2, which is still to come. Look over the date, and "
                                  "the clock of this computer.")},
    {RowProblem::UnknownAirframe,
     WORDS(
         "Line %1 names the airframe “%2”, which is not in the file. Look over the registration, or add the "
         "airframe in Set up first.")},
    {RowProblem::UnknownCoupling,
     WORDS(
         "Line %1 names the coupling “%2”, which this airframe does not have. Look over the name, or add the "
         "coupling in Set up first.")},
    {RowProblem::NoFitting,
     WORDS("Line %1 names the coupling “%2”, for which no fitting was begun. Begin one in Set up first.")},
    {RowProblem::NothingToMeasure, WORDS("Line %1 names the coupling “%2”, which has no gap to measure. Take "
                                         "the line out, or change what kind of coupling it is in Set up.")},
    {RowProblem::UnknownPerson, WORDS("Line %1 names the person “%2”, who is not in the file. Look over the "
                                      "name, or add the person in Set "
                                      "up first.")},
    {RowProblem::UnknownGauge, WORDS("Line %1 names the leaf set or gauge “%2”, which is not in the file. "
                                     "Look over the name, or add it in "
                                     "Set up first.")},
    {RowProblem::AlreadyInFile,
     WORDS(
         "Line %1 is a reading of “%2” that the file holds already. Take the line out; if it was truly read "
         "again with the same result, number it in the column repeat.")},
    {RowProblem::TwiceInTable,
     WORDS("Line %1 is a reading of “%2” that stands further up in this table too. Take the line out; if it "
           "was "
           "truly read again with the same result, number it in the column repeat.")},
    {RowProblem::RepeatSkips,
     WORDS("Line %1 is a repeated reading of “%2”, and the one before it is neither in the file nor further "
           "up in "
           "the table. Put right the line before it, or count repeat from 1 without gaps.")},
};

#undef WORDS

QString shown(const std::string& text)
{
    const QString whole = QString::fromStdString(text).simplified();
    return whole.size() <= kLongestShown ? whole : whole.left(kLongestShown) + QChar{0x2026};
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
    if (words.contains(QStringLiteral("%3")))
        return words.arg(line, shown(row.text), QString::fromStdString(row.column));
    if (words.contains(QStringLiteral("%2")))
        return words.arg(line, shown(row.text));
    return words.contains(QStringLiteral("%1")) ? words.arg(line) : words;
}

QString ImportWords::nothingImported(int problems)
{
    if (problems == 1)
        return tr("Nothing was imported. Put right what is named above, then import the whole table again.");
    return tr("Nothing was imported. Put right the %1 things named above, then import the whole table again.")
        .arg(Formats{}.count(problems));
}

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
    return tr("%n row(s) with a reading that was corrected or struck: left out.", nullptr, rows);
}

} // namespace rig
