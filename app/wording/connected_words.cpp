#include "app/wording/connected_words.h"

#include "app/wording/sentence_parts.h"

namespace rig {

namespace {

constexpr int kDigits = 9;

} // namespace

QString ConnectedWords::keyNotKnown() { return tr("0", "key for: not known who connected"); }

QString ConnectedWords::place() { return tr("Who connected"); }

QString ConnectedWords::sentence()
{
    return tr("Name everybody who connected a joint on each side. An independent second person neither "
              "connected nor measured the joint.");
}

QString ConnectedWords::question(Side side)
{
    switch (side) {
    case Side::Left:
        return tr("Who connected the left side?");
    case Side::Right:
        return tr("Who connected the right side?");
    case Side::None:
        break;
    }
    return tr("Who connected the tail and the middle?");
}

QString ConnectedWords::person(const QString& name, int number)
{
    return number <= kDigits ? tr("%1  (%2)", "person and the key").arg(name).arg(number) : name;
}

QString ConnectedWords::notKnown() { return tr("Not known"); }

QString ConnectedWords::notKnownWithKey()
{
    return tr("%1  (%2)", "answer and its key").arg(notKnown(), keyNotKnown());
}

QString ConnectedWords::spoken(Side side, const QString& answer)
{
    return tr("%1 %2", "question, answer").arg(question(side), answer);
}

QString ConnectedWords::notSaidYet() { return tr("Not said yet."); }
QString ConnectedWords::severalMay()
{
    return tr("Another press adds a name, or takes one of several away again.");
}
QString ConnectedWords::nextSide() { return tr("Next side  (Enter)"); }
QString ConnectedWords::goThere() { return tr("Who connected  (Enter)"); }
QString ConnectedWords::keys() { return tr("Number keys: a name for the framed side. 0: not known."); }

QString ConnectedWords::listDetail(int said, int of)
{
    return said == of ? tr("named for every side") : tr("named for %1 of %2 sides").arg(said).arg(of);
}

QString ConnectedWords::cannotBeSecond(const QString& name, NotSecond why)
{
    switch (why) {
    case NotSecond::DidItFirst:
        return tr("%1: looked or measured here first").arg(name);
    case NotSecond::ConnectedIt:
        break;
    }
    return tr("%1: connected this side").arg(name);
}

QString ConnectedWords::chooseSecond()
{
    return tr("Choose the second person: somebody who neither connected nor measured this joint.");
}

QString ConnectedWords::nobodyApart()
{
    return tr("Everybody in this file connected this side or measured this joint. Choose one who did not "
              "measure it; the paper will say that this was no independent look.");
}

QString ConnectedWords::connectedItToo(const QString& name)
{
    return tr("%1 connected this side. This is no independent look, and the paper will say so.").arg(name);
}

QString ConnectedWords::connectedBy(Side side, const QStringList& names)
{
    const QString who = SentenceParts::list(names);
    switch (side) {
    case Side::Left:
        return tr("The left side was connected by %1.").arg(who);
    case Side::Right:
        return tr("The right side was connected by %1.").arg(who);
    case Side::None:
        break;
    }
    return tr("The tail and the middle were connected by %1.").arg(who);
}

QString ConnectedWords::nobodySaid(Side side)
{
    switch (side) {
    case Side::Left:
        return tr("Nobody said who connected the left side.");
    case Side::Right:
        return tr("Nobody said who connected the right side.");
    case Side::None:
        break;
    }
    return tr("Nobody said who connected the tail and the middle.");
}

QString ConnectedWords::nobodySaidAtAll() { return tr("Nobody said who connected the joints."); }

QString ConnectedWords::whoIsNotKnown(Side side)
{
    switch (side) {
    case Side::Left:
        return tr("It is not known who connected the left side.");
    case Side::Right:
        return tr("It is not known who connected the right side.");
    case Side::None:
        break;
    }
    return tr("It is not known who connected the tail and the middle.");
}

QString ConnectedWords::nobodyIndependent(Side side, const QString& name)
{
    switch (side) {
    case Side::Left:
        return tr("No independent second name: %1 is named as having connected the left side.").arg(name);
    case Side::Right:
        return tr("No independent second name: %1 is named as having connected the right side.").arg(name);
    case Side::None:
        break;
    }
    return tr("No independent second name: %1 is named as having connected the tail and the middle.")
        .arg(name);
}

QString ConnectedWords::didNoSecondLook(const QString& name)
{
    return tr("%1, the second name, did no second look at any joint of this record.").arg(name);
}

QString ConnectedWords::notKnownWhetherIndependent(const QString& name)
{
    return tr("Whether %1, the second name, is independent is not known: it was not said for every side who "
              "connected.")
        .arg(name);
}

QString ConnectedWords::secondConnectedIt(const QString& name)
{
    return tr("No independent look at this joint: %1, the second person, is named as having connected this "
              "side.")
        .arg(name);
}

} // namespace rig
