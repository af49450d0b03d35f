#pragma once

#include <string>

namespace rig {

// The tables that can come into a file.
enum class TableKind { Couplings, People, Gauges, Events, JointPlays, Readings };

// Why a row, or the whole table, was not taken. Nothing doubtful is guessed at.
enum class RowProblem {
    // the table
    Empty,
    NoRows,
    TableTooLarge,
    NotUtf8,
    MixedSeparators, // commas and semicolons in the header line
    MissingColumn,
    UnknownColumn,
    ColumnTwice,
    // a row
    UnclosedQuote,
    StrayQuote,
    WrongFieldCount,
    DecimalComma, // 0,55 in a table parted by commas
    NoAirframe,
    NoCoupling,
    NoPerson,
    NoDay,
    NotADay,
    NotATime,
    NoGap, // neither bound says anything
    NotFinite,
    NotANumber,
    TwoSeparators,
    TooFine,
    Negative,
    TooWide,
    Reversed,
    SameBounds,
    UnknownState,
    UnknownAside,
    NotARepeat,
    // a row against the file
    FutureDay,
    UnknownAirframe,
    UnknownCoupling,
    NoFitting,
    NothingToMeasure, // the coupling has no gap
    UnknownPerson,
    UnknownGauge,
    AlreadyInFile,
    TwiceInTable,
    RepeatSkips,
    SecondIsPerson,
    // a row of another table than that of readings
    NothingThere, // in a column that every row needs
    TooLong,
    Invisible, // a character that nobody sees
    NameTooLong,
    NotAWord,      // one of a few words belongs there
    PartsDoNotFit, // what there is at a coupling, by its kind
    NotAPlace,     // on the plan, or half of one
    NoSizes,
    NotSizes,
    NotTwoSizes,
    SizesOfTaper,
    ResolutionOfSizes,
    ZeroLength,
    KnownGapUnread,
    CheckWithoutDay,
    DoubtAfterCheck,
    NothingTried,
    MeasuredUnfelt,
    DoneWithoutFinding,
    // such a row against the file
    SaysOtherwise, // something is known under this name, and in other words
    SaysMore,      // what nothing is known of yet
    NoFittingDay,
    FittingTwice,
    FittingTooEarly,
};

struct BadRow
{
    int line = 0;
    RowProblem problem = RowProblem::Empty;
    std::string text;   // what could not be taken, as it stands in the table
    std::string column; // where it stands, when it stands in one
    TableKind table = TableKind::Readings;
    std::string instead = {}; // the words that may stand there, or what the file says

    bool operator==(const BadRow&) const = default;
};

} // namespace rig
