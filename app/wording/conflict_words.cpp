#include "app/wording/conflict_words.h"

#include "app/wording/chain_words.h"
#include "app/wording/formats.h"
#include "app/wording/join_words.h"

#include <algorithm>

namespace rig {

namespace {

QString kindOf(const Conflict& conflict)
{
    switch (conflict.kind) {
    case ConflictKind::Closings:
        return ConflictWords::tr("One record was closed twice");
    case ConflictKind::Resolutions:
        return ConflictWords::tr("One question was answered twice");
    case ConflictKind::Versions:
        return ConflictWords::tr("One thing was changed twice");
    case ConflictKind::Corrections:
        return ConflictWords::tr("One reading was corrected twice");
    case ConflictKind::Records:
        return ConflictWords::tr("One day has two rigging records");
    case ConflictKind::Names:
        break;
    }
    return ConflictWords::tr("One name stands twice");
}

} // namespace

QString ConflictWords::title(const ToldConflict& told)
{
    QStringList parts{kindOf(told.conflict)};
    for (const std::string& name : {told.first.registration, told.first.coupling})
        if (!name.empty())
            parts << QString::fromStdString(name);
    if (parts.size() == 1) {
        const auto name = std::ranges::find(told.first.says, "name", &FactCells::column);
        parts << (name == told.first.says.end() ? JoinWords::kind(told.conflict.table)
                                                : QString::fromStdString(name->values.front().text));
    }
    return parts.join(tr(", ", "between what is said of a conflict"));
}

QString ConflictWords::until(ConflictKind kind)
{
    switch (kind) {
    case ConflictKind::Closings:
    case ConflictKind::Resolutions:
        return tr("Until somebody decides, the first of them counts: it was saved first.");
    case ConflictKind::Versions:
        return tr("Until somebody decides, the first of them holds: it is the newer one.");
    case ConflictKind::Corrections:
        return tr("Until somebody decides, both count as readings. The other one is then struck.");
    case ConflictKind::Records:
        return tr("Both records stay as they are. Somebody says whether they tell of one rigging.");
    case ConflictKind::Names:
        break;
    }
    return tr("Until somebody decides, they are two, and each is listed.");
}

QString ConflictWords::side(bool first) { return first ? tr("The first") : tr("The other"); }

QString ConflictWords::decision(ConflictKind kind, Holds holds)
{
    switch (holds) {
    case Holds::First:
        return tr("The first holds");
    case Holds::Second:
        return tr("The other holds");
    case Holds::TwoThings:
        return kind == ConflictKind::Records ? tr("Two riggings") : tr("Two different things");
    case Holds::OneThing:
        break;
    }
    return kind == ConflictKind::Records ? tr("One and the same rigging") : tr("One and the same");
}

QString ConflictWords::bar(std::span<const ToldConflict> open)
{
    const QString count = Formats{}.count(static_cast<int>(open.size()));
    if (!areAllApart(open))
        return open.size() == 1
                   ? tr("One thing is said twice, differently: it is open for a person to decide.")
                   : tr("Some things are said twice, differently: %1 are open for a person to decide.")
                         .arg(count);
    return open.size() == 1
               ? tr("Two laptops say different things: 1 is open for a person to decide.")
               : tr("Two laptops say different things: %1 are open for a person to decide.").arg(count);
}

QString ConflictWords::show() { return tr("Decide"); }
QString ConflictWords::showHint() { return tr("Show what was decided apart (Ctrl+8)"); }
QString ConflictWords::leave() { return tr("Back  (Esc)", "from what was decided apart"); }
QString ConflictWords::leaveHint()
{
    return tr("Back to the page before (Esc)", "from what was decided apart");
}
QString ConflictWords::heading() { return tr("What two laptops say differently"); }
QString ConflictWords::headingOf(std::span<const ToldConflict> open)
{
    return areAllApart(open) ? heading() : tr("What is said twice, differently");
}
QString ConflictWords::none() { return tr("Nothing is open for a person to decide."); }
QString ConflictWords::leftUndone()
{
    return tr("A reason is typed and nothing is decided by it yet. It is lost when this file is left now.");
}

QString ConflictWords::count(int open) { return tr("Open: %1").arg(Formats{}.count(open)); }
QString ConflictWords::listKeys() { return tr("Up and Down choose, Tab goes on, Esc goes back."); }
QString ConflictWords::person() { return tr("Who decides"); }
QString ConflictWords::choosePerson() { return tr("Choose a person"); }
QString ConflictWords::personMissing() { return tr("Say who decides this."); }
QString ConflictWords::reason() { return tr("Why"); }
QString ConflictWords::reasonHint() { return tr("Whom you asked, what you looked at."); }
QString ConflictWords::reasonMissing() { return tr("Say why: both stay in the file, and others will ask."); }
QString ConflictWords::decided() { return tr("Kept. Both still stand in the file."); }

QString ConflictWords::renameHint()
{
    return tr("If they are one and the same, stop using one of them and rename it in Set up.");
}

QString ConflictWords::reportIntro()
{
    return tr("Nobody has decided these yet. Ask those who are named, then let a person decide in Rigband "
              "(Ctrl+8).");
}

QString ConflictWords::decisionColumn() { return tr("Decided"); }
QString ConflictWords::decidedHeading() { return tr("What was decided between two laptops"); }
QString ConflictWords::decidedIntro() { return tr("Both sides still stand in the file."); }

QString ConflictWords::decidedBy(const QString& decision, const QString& person, const QString& day)
{
    return tr("%1: said by %2 on %3", "what was decided, who, day").arg(decision, person, day);
}

QString ConflictWords::inThisRecord(const ToldConflict& told)
{
    return tr("Open for a person to decide: %1. The first: %2. The other: %3.", "which, both sides")
        .arg(title(told), ChainWords::fact(told.first), ChainWords::fact(told.second));
}

} // namespace rig
