#include "app/wording/stored_words.h"

#include <algorithm>
#include <iterator>
#include <span>

namespace rig {

namespace {

// What stands in a file, and how it is read. A word of the file never changes, so that the chain holds.
struct Phrase
{
    std::string_view stored;
    const char* said;
};

// Whatever column they stand in.
constexpr Phrase kWords[] = {
    {"leaves", QT_TRANSLATE_NOOP("StoredWords", "leaves")},
    {"pins", QT_TRANSLATE_NOOP("StoredWords", "pins")},
    {"taper", QT_TRANSLATE_NOOP("StoredWords", "taper gauge")},
    {"go-no-go", QT_TRANSLATE_NOOP("StoredWords", "go/no-go block")},
    {"none", QT_TRANSLATE_NOOP("StoredWords", "none")},
    {"left", QT_TRANSLATE_NOOP("StoredWords", "left")},
    {"right", QT_TRANSLATE_NOOP("StoredWords", "right")},
    {"unknown", QT_TRANSLATE_NOOP("StoredWords", "not known")},
    {"a", QT_TRANSLATE_NOOP("StoredWords", "layout A")},
    {"b", QT_TRANSLATE_NOOP("StoredWords", "layout B")},
    {"c", QT_TRANSLATE_NOOP("StoredWords", "layout C")},
    {"sleeve", QT_TRANSLATE_NOOP("StoredWords", "ball joint with sleeve")},
    {"pin", QT_TRANSLATE_NOOP("StoredWords", "pin")},
    {"sleeve-and-pin", QT_TRANSLATE_NOOP("StoredWords", "ball joint with sleeve and pin")},
    {"by-itself", QT_TRANSLATE_NOOP("StoredWords", "connects by itself")},
    {"water-ballast", QT_TRANSLATE_NOOP("StoredWords", "water ballast")},
    {"other", QT_TRANSLATE_NOOP("StoredWords", "another")},
    {"not-tried", QT_TRANSLATE_NOOP("StoredWords", "not tried")},
    {"felt", QT_TRANSLATE_NOOP("StoredWords", "felt")},
    {"first", QT_TRANSLATE_NOOP("StoredWords", "the first")},
    {"second", QT_TRANSLATE_NOOP("StoredWords", "the second")},
    {"refitted", QT_TRANSLATE_NOOP("StoredWords", "refitted")},
    {"part-changed", QT_TRANSLATE_NOOP("StoredWords", "part changed")},
    {"cleaned", QT_TRANSLATE_NOOP("StoredWords", "cleaned")},
    {"greased", QT_TRANSLATE_NOOP("StoredWords", "greased")},
    {"annual", QT_TRANSLATE_NOOP("StoredWords", "annual")},
    {"note", QT_TRANSLATE_NOOP("StoredWords", "note")},
    {"derigged", QT_TRANSLATE_NOOP("StoredWords", "taken apart")},
    {"finding", QT_TRANSLATE_NOOP("StoredWords", "finding")},
    {"rigging", QT_TRANSLATE_NOOP("StoredWords", "rigging")},
    {"imported-table", QT_TRANSLATE_NOOP("StoredWords", "an imported table")},
    {"recheck", QT_TRANSLATE_NOOP("StoredWords", "gone through again without being taken apart")},
    {"ball-in-socket", QT_TRANSLATE_NOOP("StoredWords", "ball in the socket")},
    {"plunger-home", QT_TRANSLATE_NOOP("StoredWords", "plunger home")},
    {"sleeve-at-stop", QT_TRANSLATE_NOOP("StoredWords", "sleeve at its stop")},
    {"pin-through", QT_TRANSLATE_NOOP("StoredWords", "safety pin through")},
    {"engaged", QT_TRANSLATE_NOOP("StoredWords", "engaged all the way")},
    {"no-step", QT_TRANSLATE_NOOP("StoredWords", "no step at the joint")},
    {"line-connected", QT_TRANSLATE_NOOP("StoredWords", "line connected")},
    {"connected", QT_TRANSLATE_NOOP("StoredWords", "connected")},
    {"pull", QT_TRANSLATE_NOOP("StoredWords", "pull")},
    {"secured", QT_TRANSLATE_NOOP("StoredWords", "secured")},
    {"yes", QT_TRANSLATE_NOOP("StoredWords", "yes")},
    {"no", QT_TRANSLATE_NOOP("StoredWords", "no")},
    {"cannot-see", QT_TRANSLATE_NOOP("StoredWords", "cannot see")},
    {"leaf", QT_TRANSLATE_NOOP("StoredWords", "leaf")},
    {"stack", QT_TRANSLATE_NOOP("StoredWords", "several leaves together")},
    {"no-leaf-enters", QT_TRANSLATE_NOOP("StoredWords", "no leaf enters")},
    {"thickest-loose", QT_TRANSLATE_NOOP("StoredWords", "the thickest leaf was loose")},
    {"table", QT_TRANSLATE_NOOP("StoredWords", "from a table")},
    {"locked", QT_TRANSLATE_NOOP("StoredWords", "locked")},
    {"part-seated", QT_TRANSLATE_NOOP("StoredWords", "part-seated")},
    {"baseline", QT_TRANSLATE_NOOP("StoredWords", "baseline")},
    {"demonstration", QT_TRANSLATE_NOOP("StoredWords", "part-seated demonstration")},
    {"asked", QT_TRANSLATE_NOOP("StoredWords", "asked in words")},
    {"person-changed", QT_TRANSLATE_NOOP("StoredWords", "another person took over")},
    {"idle", QT_TRANSLATE_NOOP("StoredWords", "nothing was entered for long")},
    {"program-closed", QT_TRANSLATE_NOOP("StoredWords", "the program was closed")},
    {"question-closed", QT_TRANSLATE_NOOP("StoredWords", "a question was closed")},
    {"complete", QT_TRANSLATE_NOOP("StoredWords", "complete")},
    {"left-open", QT_TRANSLATE_NOOP("StoredWords", "closed with open items")},
    {"abandoned", QT_TRANSLATE_NOOP("StoredWords", "abandoned")},
    {"no-band-yet", QT_TRANSLATE_NOOP("StoredWords", "no band yet")},
    {"outside", QT_TRANSLATE_NOOP("StoredWords", "outside")},
    {"cannot-tell", QT_TRANSLATE_NOOP("StoredWords", "cannot tell")},
    {"near-edge", QT_TRANSLATE_NOOP("StoredWords", "near the edge")},
    {"inside", QT_TRANSLATE_NOOP("StoredWords", "inside")},
    {"too-few-readings", QT_TRANSLATE_NOOP("StoredWords", "too few readings")},
    {"readings-all-open", QT_TRANSLATE_NOOP("StoredWords", "all readings are open at the top")},
    {"gauge-quarantined", QT_TRANSLATE_NOOP("StoredWords", "gauge in doubt")},
    {"gap-is-no-witness", QT_TRANSLATE_NOOP("StoredWords", "the gap is no witness")},
    {"reaches-beyond-band", QT_TRANSLATE_NOOP("StoredWords", "reaches beyond the band")},
    {"facts-in-doubt", QT_TRANSLATE_NOOP("StoredWords", "facts in doubt")},
    {"ball-not-seen", QT_TRANSLATE_NOOP("StoredWords", "ball not seen")},
    {"plunger-not-seen", QT_TRANSLATE_NOOP("StoredWords", "plunger not seen")},
    {"sleeve-not-seen", QT_TRANSLATE_NOOP("StoredWords", "sleeve not seen")},
    {"pin-not-seen", QT_TRANSLATE_NOOP("StoredWords", "safety pin not seen")},
    {"joint-not-seen", QT_TRANSLATE_NOOP("StoredWords", "joint not seen")},
    {"neither", QT_TRANSLATE_NOOP("StoredWords", "neither")},
    {"below", QT_TRANSLATE_NOOP("StoredWords", "below")},
    {"above", QT_TRANSLATE_NOOP("StoredWords", "above")},
    {"never-shown", QT_TRANSLATE_NOOP("StoredWords", "never shown part-seated")},
    {"shown-too-rarely", QT_TRANSLATE_NOOP("StoredWords", "shown part-seated too rarely")},
    {"not-known", QT_TRANSLATE_NOOP("StoredWords", "not known")},
    {"good", QT_TRANSLATE_NOOP("StoredWords", "a good witness")},
    {"weak", QT_TRANSLATE_NOOP("StoredWords", "a weak witness")},
    {"aileron", QT_TRANSLATE_NOOP("StoredWords", "aileron")},
    {"elevator", QT_TRANSLATE_NOOP("StoredWords", "elevator")},
    {"rudder", QT_TRANSLATE_NOOP("StoredWords", "rudder")},
    {"flap", QT_TRANSLATE_NOOP("StoredWords", "flap")},
    {"airbrake", QT_TRANSLATE_NOOP("StoredWords", "airbrake")},
    {"trim", QT_TRANSLATE_NOOP("StoredWords", "trim")},
    {"water-dump", QT_TRANSLATE_NOOP("StoredWords", "water dump")},
    {"degrees", QT_TRANSLATE_NOOP("StoredWords", "degrees")},
    {"millimetres", QT_TRANSLATE_NOOP("StoredWords", "millimetres")},
    {"held-one-way", QT_TRANSLATE_NOOP("StoredWords", "held one way")},
    {"held-other-way", QT_TRANSLATE_NOOP("StoredWords", "held the other way")},
    {"sense", QT_TRANSLATE_NOOP("StoredWords", "sense")},
    {"full-travel", QT_TRANSLATE_NOOP("StoredWords", "full travel")},
    {"neutral", QT_TRANSLATE_NOOP("StoredWords", "neutral")},
    {"free-play", QT_TRANSLATE_NOOP("StoredWords", "free play")},
    {"freedom", QT_TRANSLATE_NOOP("StoredWords", "moves freely")},
    {"locks-evenly", QT_TRANSLATE_NOOP("StoredWords", "locks with even force")},
    {"every-notch", QT_TRANSLATE_NOOP("StoredWords", "every notch")},
    {"holds-setting", QT_TRANSLATE_NOOP("StoredWords", "holds its setting")},
    {"opens-together", QT_TRANSLATE_NOOP("StoredWords", "both open, both shut")},
    {"called-one-way", QT_TRANSLATE_NOOP("StoredWords", "called one way")},
    {"called-other-way", QT_TRANSLATE_NOOP("StoredWords", "called the other way")},
    {"up", QT_TRANSLATE_NOOP("StoredWords", "up")},
    {"down", QT_TRANSLATE_NOOP("StoredWords", "down")},
    {"out", QT_TRANSLATE_NOOP("StoredWords", "out")},
    {"in", QT_TRANSLATE_NOOP("StoredWords", "in")},
    {"opens", QT_TRANSLATE_NOOP("StoredWords", "opens")},
    {"shuts", QT_TRANSLATE_NOOP("StoredWords", "shuts")},
    {"nothing", QT_TRANSLATE_NOOP("StoredWords", "nothing")},
    {"season-cleaned", QT_TRANSLATE_NOOP("StoredWords", "cleaned for the season")},
    {"season-greased", QT_TRANSLATE_NOOP("StoredWords", "greased for the season")},
    {"season-leaves", QT_TRANSLATE_NOOP("StoredWords", "leaves checked for the season")},
    {"season-refresher", QT_TRANSLATE_NOOP("StoredWords", "couplings looked at anew for the season")},
    {"tools-out", QT_TRANSLATE_NOOP("StoredWords", "tools counted back out")},
    {"hatches-on", QT_TRANSLATE_NOOP("StoredWords", "hatches closed and taped")},
    {"note-read", QT_TRANSLATE_NOOP("StoredWords", "note read")},
    {"outside-reading", QT_TRANSLATE_NOOP("StoredWords", "reading outside its band")},
    {"answered-no", QT_TRANSLATE_NOOP("StoredWords", "answered with no")},
    {"readings-disagree", QT_TRANSLATE_NOOP("StoredWords", "two readings disagree")},
    {"sides-swapped", QT_TRANSLATE_NOOP("StoredWords", "left and right look swapped")},
    {"surface-doubt", QT_TRANSLATE_NOOP("StoredWords", "surface wrong or not seen")},
    {"band-in-doubt", QT_TRANSLATE_NOOP("StoredWords", "band in doubt")},
    {"shown-part-seated", QT_TRANSLATE_NOOP("StoredWords", "shown part-seated on purpose")},
    {"low", QT_TRANSLATE_NOOP("StoredWords", "low tailplane")},
    {"t", QT_TRANSLATE_NOOP("StoredWords", "T-tail")},
    {"v", QT_TRANSLATE_NOOP("StoredWords", "V-tail")},
    {"front", QT_TRANSLATE_NOOP("StoredWords", "the front")},
    {"rear", QT_TRANSLATE_NOOP("StoredWords", "the rear")},
    {"empty", QT_TRANSLATE_NOOP("StoredWords", "empty")},
    {"access", QT_TRANSLATE_NOOP("StoredWords", "access")},
    {"seating", QT_TRANSLATE_NOOP("StoredWords", "locked or not")},
    {"recall", QT_TRANSLATE_NOOP("StoredWords", "calls and order")},
    {"not-secured", QT_TRANSLATE_NOOP("StoredWords", "not secured")},
    {"not-connected", QT_TRANSLATE_NOOP("StoredWords", "not connected")},
    {"not-locked", QT_TRANSLATE_NOOP("StoredWords", "not locked")},
    {"call", QT_TRANSLATE_NOOP("StoredWords", "call")},
    {"order", QT_TRANSLATE_NOOP("StoredWords", "order of rigging")},
    {"whom-to-call", QT_TRANSLATE_NOOP("StoredWords", "whom to call")},
    {"when-to-stop", QT_TRANSLATE_NOOP("StoredWords", "when to stop")},
    {"signed", QT_TRANSLATE_NOOP("StoredWords", "signed off")},
    {"withdrawn", QT_TRANSLATE_NOOP("StoredWords", "withdrawn")},
    {"closings", QT_TRANSLATE_NOOP("StoredWords", "closings of a record")},
    {"resolutions", QT_TRANSLATE_NOOP("StoredWords", "answers to a question")},
    {"versions", QT_TRANSLATE_NOOP("StoredWords", "versions of one thing")},
    {"corrections", QT_TRANSLATE_NOOP("StoredWords", "corrections of a reading")},
    {"records", QT_TRANSLATE_NOOP("StoredWords", "rigging records")},
    {"names", QT_TRANSLATE_NOOP("StoredWords", "names")},
    {"two-things", QT_TRANSLATE_NOOP("StoredWords", "two things")},
    {"one-thing", QT_TRANSLATE_NOOP("StoredWords", "one and the same")},
};

// What is read otherwise in one column, or in one of one table.
struct Otherwise
{
    std::string_view table; // empty: any
    std::string_view column;
    Phrase phrase;
};

constexpr Otherwise kOtherwise[] = {
    {"", "turn", {"first", QT_TRANSLATE_NOOP("StoredWords", "first person")}},
    {"", "turn", {"second", QT_TRANSLATE_NOOP("StoredWords", "second person")}},
    {"fitting", "kind", {"first", QT_TRANSLATE_NOOP("StoredWords", "with the coupling itself")}},
    {"coupling", "kind", {"pin", QT_TRANSLATE_NOOP("StoredWords", "ball joint with safety pin")}},
    {"", "along", {"none", QT_TRANSLATE_NOOP("StoredWords", "none felt")}},
    {"", "across", {"none", QT_TRANSLATE_NOOP("StoredWords", "none felt")}},
    {"interruption", "reason", {"asked", QT_TRANSLATE_NOOP("StoredWords", "by the person at work")}},
};

constexpr Phrase kColumns[] = {
    {"role", QT_TRANSLATE_NOOP("StoredWords", "role")},
    {"phone", QT_TRANSLATE_NOOP("StoredWords", "telephone")},
    {"registration", QT_TRANSLATE_NOOP("StoredWords", "registration")},
    {"type", QT_TRANSLATE_NOOP("StoredWords", "type")},
    {"serial", QT_TRANSLATE_NOOP("StoredWords", "serial number")},
    {"jurisdiction", QT_TRANSLATE_NOOP("StoredWords", "jurisdiction")},
    {"manual_refs", QT_TRANSLATE_NOOP("StoredWords", "manuals and directives")},
    {"annual_due", QT_TRANSLATE_NOOP("StoredWords", "annual due")},
    {"call_name", QT_TRANSLATE_NOOP("StoredWords", "whom to call")},
    {"call_phone", QT_TRANSLATE_NOOP("StoredWords", "telephone of whom to call")},
    {"riggings_before", QT_TRANSLATE_NOOP("StoredWords", "riggings before this file")},
    {"span_cm", QT_TRANSLATE_NOOP("StoredWords", "span in centimetres")},
    {"tail", QT_TRANSLATE_NOOP("StoredWords", "tail")},
    {"wing_panels", QT_TRANSLATE_NOOP("StoredWords", "wing panels")},
    {"kind", QT_TRANSLATE_NOOP("StoredWords", "kind")},
    {"resolution_um", QT_TRANSLATE_NOOP("StoredWords", "resolution")},
    {"tolerance_um", QT_TRANSLATE_NOOP("StoredWords", "tolerance")},
    {"in_use", QT_TRANSLATE_NOOP("StoredWords", "in use")},
    {"gauge", QT_TRANSLATE_NOOP("StoredWords", "gauge")},
    {"day", QT_TRANSLATE_NOOP("StoredWords", "day")},
    {"how", QT_TRANSLATE_NOOP("StoredWords", "how it was checked")},
    {"found", QT_TRANSLATE_NOOP("StoredWords", "found")},
    {"quarantine_from", QT_TRANSLATE_NOOP("StoredWords", "readings in doubt from")},
    {"known_um", QT_TRANSLATE_NOOP("StoredWords", "known gap")},
    {"known_enters_um", QT_TRANSLATE_NOOP("StoredWords", "enters the known gap")},
    {"known_refuses_um", QT_TRANSLATE_NOOP("StoredWords", "does not enter the known gap")},
    {"airframe", QT_TRANSLATE_NOOP("StoredWords", "airframe")},
    {"circuit_kind", QT_TRANSLATE_NOOP("StoredWords", "circuit")},
    {"circuit", QT_TRANSLATE_NOOP("StoredWords", "circuit in words")},
    {"side", QT_TRANSLATE_NOOP("StoredWords", "side")},
    {"plan_x", QT_TRANSLATE_NOOP("StoredWords", "place on the plan, across")},
    {"plan_y", QT_TRANSLATE_NOOP("StoredWords", "place on the plan, along")},
    {"access", QT_TRANSLATE_NOOP("StoredWords", "access")},
    {"seen_from", QT_TRANSLATE_NOOP("StoredWords", "seen from")},
    {"mirror_from", QT_TRANSLATE_NOOP("StoredWords", "mirror from")},
    {"leaf_place", QT_TRANSLATE_NOOP("StoredWords", "place of the leaf")},
    {"layout", QT_TRANSLATE_NOOP("StoredWords", "layout")},
    {"has_gap", QT_TRANSLATE_NOOP("StoredWords", "a gap to measure")},
    {"has_pull", QT_TRANSLATE_NOOP("StoredWords", "something to pull")},
    {"has_securing", QT_TRANSLATE_NOOP("StoredWords", "something to secure")},
    {"rigging_order", QT_TRANSLATE_NOOP("StoredWords", "rigging order")},
    {"coupling", QT_TRANSLATE_NOOP("StoredWords", "coupling")},
    {"begins", QT_TRANSLATE_NOOP("StoredWords", "begins")},
    {"done", QT_TRANSLATE_NOOP("StoredWords", "done")},
    {"origin", QT_TRANSLATE_NOOP("StoredWords", "came from")},
    {"leader", QT_TRANSLATE_NOOP("StoredWords", "rigging leader")},
    {"begins_at", QT_TRANSLATE_NOOP("StoredWords", "begun on")},
    {"celsius", QT_TRANSLATE_NOOP("StoredWords", "temperature, °C")},
    {"entered_by", QT_TRANSLATE_NOOP("StoredWords", "typed in by")},
    {"record", QT_TRANSLATE_NOOP("StoredWords", "rigging record")},
    {"turn", QT_TRANSLATE_NOOP("StoredWords", "turn")},
    {"answered_at", QT_TRANSLATE_NOOP("StoredWords", "answered on")},
    {"copied_by", QT_TRANSLATE_NOOP("StoredWords", "copied by")},
    {"fitting", QT_TRANSLATE_NOOP("StoredWords", "fitting")},
    {"technique", QT_TRANSLATE_NOOP("StoredWords", "how it was read")},
    {"state", QT_TRANSLATE_NOOP("StoredWords", "state")},
    {"second", QT_TRANSLATE_NOOP("StoredWords", "second person")},
    {"corrects", QT_TRANSLATE_NOOP("StoredWords", "corrects")},
    {"method", QT_TRANSLATE_NOOP("StoredWords", "version of the method")},
    {"direction", QT_TRANSLATE_NOOP("StoredWords", "direction")},
    {"witness", QT_TRANSLATE_NOOP("StoredWords", "witness")},
    {"miss", QT_TRANSLATE_NOOP("StoredWords", "chance to miss it")},
    {"inner_lower", QT_TRANSLATE_NOOP("StoredWords", "inner edge below, mm")},
    {"inner_upper", QT_TRANSLATE_NOOP("StoredWords", "inner edge above, mm")},
    {"outer_lower", QT_TRANSLATE_NOOP("StoredWords", "outer edge below, mm")},
    {"outer_upper", QT_TRANSLATE_NOOP("StoredWords", "outer edge above, mm")},
    {"median", QT_TRANSLATE_NOOP("StoredWords", "middle, mm")},
    {"scatter", QT_TRANSLATE_NOOP("StoredWords", "scatter, mm")},
    {"readings", QT_TRANSLATE_NOOP("StoredWords", "readings")},
    {"at_cap", QT_TRANSLATE_NOOP("StoredWords", "scatter taken as the largest")},
    {"reading", QT_TRANSLATE_NOOP("StoredWords", "reading")},
    {"first", QT_TRANSLATE_NOOP("StoredWords", "first person")},
    {"closing", QT_TRANSLATE_NOOP("StoredWords", "how it was closed")},
    {"along", QT_TRANSLATE_NOOP("StoredWords", "play along the rod")},
    {"along_um", QT_TRANSLATE_NOOP("StoredWords", "play along the rod, measured")},
    {"across", QT_TRANSLATE_NOOP("StoredWords", "play across the rod")},
    {"across_um", QT_TRANSLATE_NOOP("StoredWords", "play across the rod, measured")},
    {"check_order", QT_TRANSLATE_NOOP("StoredWords", "order of the control check")},
    {"sense_call", QT_TRANSLATE_NOOP("StoredWords", "call")},
    {"unit", QT_TRANSLATE_NOOP("StoredWords", "unit")},
    {"measured_at_um", QT_TRANSLATE_NOOP("StoredWords", "distance of the ruler")},
    {"up_nominal", QT_TRANSLATE_NOOP("StoredWords", "up, from the manual")},
    {"up_tolerance", QT_TRANSLATE_NOOP("StoredWords", "up, tolerance")},
    {"down_nominal", QT_TRANSLATE_NOOP("StoredWords", "down, from the manual")},
    {"down_tolerance", QT_TRANSLATE_NOOP("StoredWords", "down, tolerance")},
    {"most_play", QT_TRANSLATE_NOOP("StoredWords", "most play of the surface")},
    {"manual_reference", QT_TRANSLATE_NOOP("StoredWords", "place in the manual")},
    {"surface", QT_TRANSLATE_NOOP("StoredWords", "surface")},
    {"cockpit", QT_TRANSLATE_NOOP("StoredWords", "in the cockpit")},
    {"seen", QT_TRANSLATE_NOOP("StoredWords", "seen")},
    {"value", QT_TRANSLATE_NOOP("StoredWords", "measured")},
    {"question", QT_TRANSLATE_NOOP("StoredWords", "question")},
    {"check_kind", QT_TRANSLATE_NOOP("StoredWords", "question of the look")},
    {"surface_check", QT_TRANSLATE_NOOP("StoredWords", "question of the control check")},
    {"text", QT_TRANSLATE_NOOP("StoredWords", "in words")},
    {"shows", QT_TRANSLATE_NOOP("StoredWords", "shows")},
    {"photo", QT_TRANSLATE_NOOP("StoredWords", "photo")},
    {"width", QT_TRANSLATE_NOOP("StoredWords", "width")},
    {"height", QT_TRANSLATE_NOOP("StoredWords", "height")},
    {"asks", QT_TRANSLATE_NOOP("StoredWords", "asks")},
    {"round", QT_TRANSLATE_NOOP("StoredWords", "round of practice")},
    {"shown", QT_TRANSLATE_NOOP("StoredWords", "what was shown")},
    {"gap_um", QT_TRANSLATE_NOOP("StoredWords", "gap")},
    {"mirror", QT_TRANSLATE_NOOP("StoredWords", "mirror")},
    {"torch", QT_TRANSLATE_NOOP("StoredWords", "torch")},
    {"expected", QT_TRANSLATE_NOOP("StoredWords", "expected")},
    {"said", QT_TRANSLATE_NOOP("StoredWords", "said")},
    {"sure", QT_TRANSLATE_NOOP("StoredWords", "felt certain")},
    {"recalls", QT_TRANSLATE_NOOP("StoredWords", "asked for")},
    {"asked", QT_TRANSLATE_NOOP("StoredWords", "asked")},
    {"learner", QT_TRANSLATE_NOOP("StoredWords", "learner")},
    {"mentor", QT_TRANSLATE_NOOP("StoredWords", "mentor")},
    {"signer", QT_TRANSLATE_NOOP("StoredWords", "signed by")},
    {"months", QT_TRANSLATE_NOOP("StoredWords", "months")},
    {"months_without_rigging", QT_TRANSLATE_NOOP("StoredWords", "months without rigging")},
    {"asked_supervised", QT_TRANSLATE_NOOP("StoredWords", "riggings under supervision then")},
    {"asked_not_practised", QT_TRANSLATE_NOOP("StoredWords", "not practised then")},
    {"asked_missed", QT_TRANSLATE_NOOP("StoredWords", "missed then")},
    {"repeats", QT_TRANSLATE_NOOP("StoredWords", "repeats")},
    {"study", QT_TRANSLATE_NOOP("StoredWords", "crossed study")},
    {"place", QT_TRANSLATE_NOOP("StoredWords", "place in the study")},
    {"shared", QT_TRANSLATE_NOOP("StoredWords", "may be told to others")},
    {"supervised", QT_TRANSLATE_NOOP("StoredWords", "rigging under supervision")},
    {"practice", QT_TRANSLATE_NOOP("StoredWords", "reading in practice")},
    {"holds", QT_TRANSLATE_NOOP("StoredWords", "holds")},
    {"replaced", QT_TRANSLATE_NOOP("StoredWords", "version of a person")},
    {"reads", QT_TRANSLATE_NOOP("StoredWords", "digest of what it reads since then")},
    {"enters_um", QT_TRANSLATE_NOOP("StoredWords", "enters")},
    {"refuses_um", QT_TRANSLATE_NOOP("StoredWords", "does not enter")},
    {"measured_at", QT_TRANSLATE_NOOP("StoredWords", "measured at")},
    {"note", QT_TRANSLATE_NOOP("StoredWords", "note")},
    {"name", QT_TRANSLATE_NOOP("StoredWords", "name")},
    {"answer", QT_TRANSLATE_NOOP("StoredWords", "answer")},
    {"reason", QT_TRANSLATE_NOOP("StoredWords", "reason")},
    {"purpose", QT_TRANSLATE_NOOP("StoredWords", "purpose")},
    {"verdict", QT_TRANSLATE_NOOP("StoredWords", "shown at the time")},
    {"person", QT_TRANSLATE_NOOP("StoredWords", "by")},
    {"size_um", QT_TRANSLATE_NOOP("StoredWords", "leaves")},
    {"jpeg", QT_TRANSLATE_NOOP("StoredWords", "picture")},
};

// Columns that hold words; where a table is named, there alone, for elsewhere somebody typed what stands in
// it.
struct WordColumn
{
    std::string_view table; // empty: any
    std::string_view column;
};

constexpr WordColumn kWordColumns[] = {
    {"", "kind"},
    {"", "circuit_kind"},
    {"", "side"},
    {"", "seen_from"},
    {"", "mirror_from"},
    {"", "layout"},
    {"airframe", "tail"},
    {"", "along"},
    {"", "across"},
    {"rigging_record", "origin"},
    {"", "answer"},
    {"answer", "turn"},
    {"interruption", "turn"},
    {"reading", "turn"},
    {"", "technique"},
    {"", "state"},
    {"", "purpose"},
    {"interruption", "reason"},
    {"reading", "reason"},
    {"", "closing"},
    {"", "verdict"},
    {"", "direction"},
    {"", "witness"},
    {"", "unit"},
    {"", "seen"},
    {"", "check_kind"},
    {"", "surface_check"},
    {"", "shows"},
    {"", "shown"},
    {"seating_answer", "expected"},
    {"seating_answer", "said"},
    {"", "recalls"},
    {"", "holds"},
};

constexpr std::string_view kYesOrNo[] = {"in_use", "has_gap", "has_pull", "has_securing", "at_cap",
                                         "mirror", "torch",   "sure",     "shared"};

QString said(const char* text) { return QCoreApplication::translate("StoredWords", text); }

QString saidIn(std::span<const Phrase> phrases, std::string_view stored)
{
    const auto found = std::ranges::find(phrases, stored, &Phrase::stored);
    return found == phrases.end() ? QString{} : said(found->said);
}

} // namespace

QString StoredWords::column(std::string_view column) { return saidIn(kColumns, column); }

bool StoredWords::areWords(std::string_view table, std::string_view column)
{
    return std::ranges::any_of(kWordColumns, [&](const WordColumn& one) {
        return one.column == column && (one.table.empty() || one.table == table);
    });
}

QString StoredWords::word(std::string_view table, std::string_view column, std::string_view stored)
{
    for (const Otherwise& one : kOtherwise)
        if (one.column == column && (one.table.empty() || one.table == table) && one.phrase.stored == stored)
            return said(one.phrase.said);
    return saidIn(kWords, stored);
}

QString StoredWords::yesOrNo(std::string_view column, std::string_view stored)
{
    if (std::ranges::find(kYesOrNo, column) == std::end(kYesOrNo) || (stored != "0" && stored != "1"))
        return {};
    return saidIn(kWords, stored == "1" ? "yes" : "no");
}

} // namespace rig
