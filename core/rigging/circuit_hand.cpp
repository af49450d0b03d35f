#include "core/rigging/circuit_hand.h"

#include <algorithm>

namespace rig {

namespace {

class LastHand
{
public:
    LastHand(std::span<const Coupling> couplings, SurfaceKind surface)
        : m_couplings{couplings}, m_surface{surface}
    {
    }

    template <typename Fact> void note(const Fact& fact, CouplingId coupling)
    {
        const SaveOrder saved = saveOrderOf(fact);
        if (isInCircuit(coupling) && (!m_last || m_last->saved < saved))
            m_last = JointHand{coupling, fact.stamp.when, saved};
    }

    const std::optional<JointHand>& last() const { return m_last; }

private:
    bool isInCircuit(CouplingId coupling) const
    {
        const auto found = std::ranges::find(m_couplings, coupling, &Coupling::id);
        return found != m_couplings.end() && mayMove(found->circuit, m_surface);
    }

    std::span<const Coupling> m_couplings;
    SurfaceKind m_surface;
    std::optional<JointHand> m_last;
};

// A correction tells of what was measured before, unless it was measured anew.
bool isOnlyPutRight(const Reading& reading)
{
    return reading.corrects && reading.when.utcSeconds < reading.stamp.when.utcSeconds;
}

} // namespace

std::optional<JointHand> lastHandOn(const RecordContent& content, std::span<const Coupling> couplings,
                                    const Surface& surface)
{
    LastHand hand{couplings, surface.kind};
    for (const Check& check : content.checks)
        hand.note(check, check.coupling);
    for (const Reading& reading : content.readings)
        if (!isOnlyPutRight(reading))
            hand.note(reading, reading.coupling);
    for (const Interruption& interruption : content.interruptions)
        hand.note(interruption, interruption.coupling);
    for (const JointPlay& play : content.jointPlays)
        hand.note(play, play.coupling);
    for (const QuestionStory& story : content.questions)
        if (story.question.coupling && story.resolution)
            hand.note(*story.resolution, *story.question.coupling);
    return hand.last();
}

} // namespace rig
