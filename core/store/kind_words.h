#pragma once

#include "core/airframe/coupling.h"
#include "core/judgement/judgement.h"
#include "core/rigging/event.h"
#include "core/rigging/rigging_record.h"

#include <array>
#include <optional>
#include <string_view>
#include <utility>

namespace rig {

// The short word that the file holds for each kind. Released words never change.
template <typename Kind> struct KindWords;

// One list per kind; the compiler's promise that every value is named comes from store_tests.
template <> struct KindWords<GaugeKind>
{
    static constexpr std::array all{std::pair{GaugeKind::Leaves, "leaves"},
                                    std::pair{GaugeKind::Pins, "pins"}, std::pair{GaugeKind::Taper, "taper"}};
};
template <> struct KindWords<Side>
{
    static constexpr std::array all{std::pair{Side::None, "none"}, std::pair{Side::Left, "left"},
                                    std::pair{Side::Right, "right"}};
};
template <> struct KindWords<Layout>
{
    static constexpr std::array all{std::pair{Layout::Unknown, "unknown"}, std::pair{Layout::A, "a"},
                                    std::pair{Layout::B, "b"}, std::pair{Layout::C, "c"}};
};
template <> struct KindWords<Securing>
{
    static constexpr std::array all{std::pair{Securing::Sleeve, "sleeve"}, std::pair{Securing::Pin, "pin"},
                                    std::pair{Securing::SleeveAndPin, "sleeve-and-pin"}};
};
template <> struct KindWords<EventKind>
{
    static constexpr std::array all{
        std::pair{EventKind::Cleaned, "cleaned"},   std::pair{EventKind::Greased, "greased"},
        std::pair{EventKind::Refitted, "refitted"}, std::pair{EventKind::PartChanged, "part-changed"},
        std::pair{EventKind::Annual, "annual"},     std::pair{EventKind::Note, "note"}};
};
template <> struct KindWords<RecordOrigin>
{
    static constexpr std::array all{std::pair{RecordOrigin::Rigging, "rigging"},
                                    std::pair{RecordOrigin::ImportedTable, "imported-table"}};
};
template <> struct KindWords<CheckKind>
{
    static constexpr std::array all{std::pair{CheckKind::BallInSocket, "ball-in-socket"},
                                    std::pair{CheckKind::PlungerHome, "plunger-home"},
                                    std::pair{CheckKind::SleeveAtStop, "sleeve-at-stop"},
                                    std::pair{CheckKind::Pull, "pull"}};
};
template <> struct KindWords<Answer>
{
    static constexpr std::array all{std::pair{Answer::Yes, "yes"}, std::pair{Answer::No, "no"},
                                    std::pair{Answer::CannotSee, "cannot-see"}};
};
template <> struct KindWords<Turn>
{
    static constexpr std::array all{std::pair{Turn::First, "first"}, std::pair{Turn::Second, "second"}};
};
template <> struct KindWords<Technique>
{
    static constexpr std::array all{std::pair{Technique::Leaf, "leaf"},
                                    std::pair{Technique::Stack, "stack"},
                                    std::pair{Technique::NoLeafEnters, "no-leaf-enters"},
                                    std::pair{Technique::ThickestLoose, "thickest-loose"},
                                    std::pair{Technique::Pin, "pin"},
                                    std::pair{Technique::Taper, "taper"},
                                    std::pair{Technique::Table, "table"}};
};
template <> struct KindWords<SeatState>
{
    static constexpr std::array all{std::pair{SeatState::Locked, "locked"},
                                    std::pair{SeatState::PartSeated, "part-seated"}};
};
template <> struct KindWords<Purpose>
{
    static constexpr std::array all{std::pair{Purpose::Rigging, "rigging"},
                                    std::pair{Purpose::Baseline, "baseline"},
                                    std::pair{Purpose::Demonstration, "demonstration"}};
};
template <> struct KindWords<InterruptionReason>
{
    static constexpr std::array all{std::pair{InterruptionReason::Asked, "asked"},
                                    std::pair{InterruptionReason::PersonChanged, "person-changed"},
                                    std::pair{InterruptionReason::Idle, "idle"},
                                    std::pair{InterruptionReason::ProgramClosed, "program-closed"}};
};
template <> struct KindWords<Closing>
{
    static constexpr std::array all{std::pair{Closing::Complete, "complete"},
                                    std::pair{Closing::LeftOpen, "left-open"},
                                    std::pair{Closing::Abandoned, "abandoned"}};
};
template <> struct KindWords<Verdict>
{
    static constexpr std::array all{
        std::pair{Verdict::NoBandYet, "no-band-yet"}, std::pair{Verdict::Outside, "outside"},
        std::pair{Verdict::CannotTell, "cannot-tell"}, std::pair{Verdict::NearEdge, "near-edge"},
        std::pair{Verdict::Inside, "inside"}};
};
template <> struct KindWords<Reason>
{
    static constexpr std::array all{std::pair{Reason::None, "none"},
                                    std::pair{Reason::TooFewReadings, "too-few-readings"},
                                    std::pair{Reason::GaugeQuarantined, "gauge-quarantined"},
                                    std::pair{Reason::GapIsNoWitness, "gap-is-no-witness"},
                                    std::pair{Reason::ReachesBeyondBand, "reaches-beyond-band"}};
};
template <> struct KindWords<Direction>
{
    static constexpr std::array all{std::pair{Direction::Neither, "neither"},
                                    std::pair{Direction::Below, "below"},
                                    std::pair{Direction::Above, "above"}};
};
template <> struct KindWords<Witness>
{
    static constexpr std::array all{std::pair{Witness::NeverShown, "never-shown"},
                                    std::pair{Witness::Good, "good"}, std::pair{Witness::Weak, "weak"},
                                    std::pair{Witness::None, "none"}};
};

template <typename Kind> constexpr const char* wordOf(Kind kind)
{
    for (const auto& [value, word] : KindWords<Kind>::all)
        if (value == kind)
            return word;
    return ""; // refused by the table's own check
}

template <typename Kind> constexpr std::optional<Kind> kindFrom(std::string_view text)
{
    for (const auto& [value, word] : KindWords<Kind>::all)
        if (text == word)
            return value;
    return std::nullopt;
}

} // namespace rig
