#include "app/wording/joint_play_words.h"

#include "app/wording/formats.h"
#include "core/airframe/name_in.h"

#include <ranges>

namespace rig {

namespace {

constexpr int kToldAtOnce = 2;

QString withFigure(const PlayFound& one)
{
    if (!one.measured)
        return JointPlayWords::felt(one.felt);
    return JointPlayWords::feltWithFigure(JointPlayWords::felt(one.felt),
                                          Formats{}.number(one.measured->inMillimetres(), 2));
}

} // namespace

QString JointPlayWords::felt(PlayFelt felt)
{
    switch (felt) {
    case PlayFelt::None:
        return tr("no play");
    case PlayFelt::Felt:
        return tr("play");
    case PlayFelt::NotTried:
        break;
    }
    return tr("not tried");
}

QString JointPlayWords::sentence(const JointPlay& play, const QString& person)
{
    const QString said =
        tr("Joint play on %1: along the rod %2; sideways %3. Tried by %4.")
            .arg(Formats{}.day(play.day), withFigure(play.along), withFigure(play.across), person);
    return play.note.empty() ? said
                             : tr("%1 %2", "joint play, note").arg(said, QString::fromStdString(play.note));
}

QString JointPlayWords::feltWithFigure(const QString& felt, const QString& millimetres)
{
    return tr("%1, %2 mm", "felt, millimetres").arg(felt, millimetres);
}

QString JointPlayWords::found(const JointPlay& play)
{
    return tr("joint play: along the rod %1; sideways %2")
        .arg(withFigure(play.along), withFigure(play.across));
}

QString JointPlayWords::sentence(const JointPlay& play) const
{
    return sentence(play, QString::fromStdString(m_facts.nameOf(play.person)));
}

QString JointPlayWords::withCoupling(const JointPlay& play) const
{
    return tr("%1: %2 %3", "coupling, joint play, whose limit counts")
        .arg(QString::fromStdString(nameIn(m_facts.couplings, play.coupling)), sentence(play),
             manualHasTheLimit());
}

QStringList JointPlayWords::latest(CouplingId coupling, Day to) const
{
    QStringList told;
    int earlier = 0;
    for (const JointPlay& play : m_facts.jointPlays | std::views::reverse) {
        if (play.coupling != coupling || play.day > to)
            continue;
        if (told.size() < kToldAtOnce)
            told << sentence(play);
        else
            ++earlier;
    }
    if (earlier > 0)
        told << tr("%n earlier time(s): see the tables.", nullptr, earlier);
    if (!told.isEmpty())
        told << manualHasTheLimit();
    return told;
}

QString JointPlayWords::manualHasTheLimit()
{
    return tr("If there is a limit, it is in the manual. Refer any play to the engineer.");
}
QString JointPlayWords::heading() { return tr("Joint play"); }
QString JointPlayWords::open() { return tr("Joint pla&y"); }
QString JointPlayWords::key() { return tr("P", "key for joint play"); }
QString JointPlayWords::openWithKey() { return tr("Joint play  (%1)").arg(key()); }

QString JointPlayWords::how()
{
    return tr("Hold both sides close to the joint. Push and pull along the rod, then sideways. Any click or "
              "shift that you feel or see is play. This is not the gap, and nothing here judges it: if there "
              "is a limit, "
              "it is in the manual. Refer any play to the engineer.");
}

QString JointPlayWords::along() { return tr("&Along the rod"); }
QString JointPlayWords::across() { return tr("Side&ways"); }
QString JointPlayWords::measured() { return tr("mm, if measured"); }
QString JointPlayWords::measuredAlong() { return tr("Along the rod, &mm"); }
QString JointPlayWords::measuredAcross() { return tr("S&ideways, mm"); }
QString JointPlayWords::day() { return tr("&Day"); }
QString JointPlayWords::where() { return tr("&Coupling"); }
QString JointPlayWords::person() { return tr("Tried &by"); }
QString JointPlayWords::choosePerson() { return tr("Choose who tried it. Nobody is filled in for you."); }
QString JointPlayWords::chooseCoupling() { return tr("Choose the coupling."); }
QString JointPlayWords::note() { return tr("&Note"); }
QString JointPlayWords::noteHint() { return tr("How it was measured, and what was done."); }
QString JointPlayWords::keep() { return tr("Keep it  (Enter)"); }
QString JointPlayWords::close() { return tr("Close  (Esc)"); }
QString JointPlayWords::tryOne() { return tr("Say of at least one way whether there is play."); }

QString JointPlayWords::refusal(PlayProblem problem)
{
    switch (problem) {
    case PlayProblem::MeasuredNotFelt:
        return tr("A figure stands where no play is said. Say “play”, or take the figure out.");
    case PlayProblem::NothingMeasured:
        return tr("A measured play is more than 0 mm. Leave the figure out where there was none.");
    case PlayProblem::None:
        break;
    }
    return {};
}

} // namespace rig
