#include "app/wording/coupling_words.h"

namespace rig {

QString CouplingWords::layoutShort(Layout layout)
{
    switch (layout) {
    case Layout::A:
        return tr("layout A");
    case Layout::B:
        return tr("layout B");
    case Layout::C:
        return tr("layout C");
    case Layout::Unknown:
        break;
    }
    return tr("layout not known");
}

QString CouplingWords::sideName(Side side)
{
    switch (side) {
    case Side::Left:
        return tr("Left");
    case Side::Right:
        return tr("Right");
    case Side::None:
        break;
    }
    return tr("Neither");
}

QString CouplingWords::layoutName(Layout layout)
{
    switch (layout) {
    case Layout::A:
        return tr("A: tab moves away from the sleeve");
    case Layout::B:
        return tr("B: tab moves towards the sleeve");
    case Layout::C:
        return tr("C: sleeve rides over the tab");
    case Layout::Unknown:
        break;
    }
    return tr("Not known");
}

// docs/terms.md, layouts A, B and C
QString CouplingWords::layoutSentence(Layout layout)
{
    switch (layout) {
    case Layout::A:
        return tr("Locking moves the plunger tab away from the sleeve. Part-seated leaves the tab nearer: "
                  "the gap is "
                  "smaller, or the sleeve does not come to its stop and the gap is larger.");
    case Layout::B:
        return tr("Locking moves the plunger tab towards the sleeve. Part-seated leaves the tab short of its "
                  "place: "
                  "the gap is larger.");
    case Layout::C:
        return tr(
            "The sleeve slides over the plunger tab. A part-seated tab stops the sleeve early: the gap is "
            "larger.");
    case Layout::Unknown:
        break;
    }
    return tr("Leave it so until somebody has looked. Readings are watched on both sides in any case.");
}

QString CouplingWords::securingName(Securing securing)
{
    switch (securing) {
    case Securing::Pin:
        return tr("Pin through the witness hole");
    case Securing::SleeveAndPin:
        return tr("Locking sleeve and pin");
    case Securing::Sleeve:
        break;
    }
    return tr("Locking sleeve");
}

QString CouplingWords::takeOutQuestion()
{
    return tr("It leaves the rigging order and new records. Its readings, fittings and bands stay in the "
              "file, and it "
              "can be put back at any time.");
}

QString CouplingWords::fittingMeaning()
{
    return tr(
        "A new fitting ends the old baseline: from that day on this coupling has no band until new baseline "
        "readings are taken. Older readings stay with the fitting they were taken on. Use it after a refit, "
        "an "
        "adjustment or a changed part, and only then.");
}

QString CouplingWords::usualMeaning()
{
    return tr("Tick what this airframe has. Each is added with its first fitting from today. What is not on "
              "the list "
              "you add yourself, and every name can be changed.");
}

} // namespace rig
