#include "app/wording/lesson_picture_words.h"

#include "app/wording/formats.h"
#include "app/wording/sentence_parts.h"

#include <algorithm>
#include <cmath>

namespace rig {

QString LessonPictureWords::state(JointState state)
{
    switch (state) {
    case JointState::PartSeated:
        return tr("Part-seated");
    case JointState::NotSecured:
        return tr("Not secured");
    case JointState::NotConnected:
        return tr("Not connected");
    case JointState::Locked:
        break;
    }
    return tr("Locked");
}

QStringList LessonPictureWords::title(JointState state)
{
    switch (state) {
    case JointState::PartSeated:
        return {tr("Part-seated: can let go in flight"), LessonPictureWords::state(state)};
    case JointState::NotSecured:
        return {tr("Home, but not secured"), LessonPictureWords::state(state)};
    case JointState::NotConnected:
        return {tr("Not connected: can look locked"), LessonPictureWords::state(state)};
    case JointState::Locked:
        break;
    }
    return {tr("Seated and locked"), LessonPictureWords::state(state)};
}

QStringList LessonPictureWords::figure(const CutawayGap& gap)
{
    const QString mm = Formats{}.millimetres(gap.mm.value_or(0));
    switch (gap.ground) {
    case GapGround::Between:
        return {tr("gap about %1 mm", "on the way between two readings").arg(mm), tr("about %1 mm").arg(mm)};
    case GapGround::LooksOwn:
        return {tr("gap may still read %1 mm").arg(mm), tr("may read %1").arg(mm)};
    case GapGround::NeverShown:
        return {tr("gap never measured like this"), tr("never measured"), tr("unknown")};
    case GapGround::NoReadings:
        return {tr("gap: no readings yet"), tr("no readings"), tr("unknown")};
    case GapGround::NoReading:
        return {tr("no valid reading like this"), tr("no reading")};
    case GapGround::Own:
        break;
    }
    return {tr("gap %1 mm").arg(mm), tr("%1 mm").arg(mm)};
}

QString LessonPictureWords::caption(const Cutaway& cutaway)
{
    switch (cutaway.state) {
    case JointState::PartSeated:
        if (cutaway.sleeve.heldByTab)
            return tr("Ball too high: it holds the plunger back. The tab keeps the sleeve from its stop, and "
                      "thread shows.");
        if (cutaway.hasSleeve && cutaway.sleeve.atStop)
            return tr("Ball too high: it holds the plunger back. The sleeve comes to its stop all the same.");
        return tr("Ball too high: it holds the plunger back.");
    case JointState::NotSecured:
        if (cutaway.hasSleeve && !cutaway.sleeve.atStop)
            return tr("Ball and plunger are home, but the sleeve is back and thread shows. It can be pressed "
                      "open.");
        return tr("Ball and plunger are home, but the pin is out. It can be pressed open.");
    case JointState::NotConnected:
        return tr(
            "There is no ball in the socket. Plunger and gap can look locked: the gap alone cannot show "
            "a ball.");
    case JointState::Locked:
        break;
    }
    if (!cutaway.hasPin)
        return tr("Ball at the bottom, nose over its widest line, sleeve at its stop.");
    return cutaway.hasSleeve
               ? tr("Ball at the bottom, nose over its widest line, sleeve at its stop, pin in.")
               : tr("Ball at the bottom, nose over its widest line, pin in.");
}

QString LessonPictureWords::gapSentence(const Cutaway& cutaway)
{
    const QString mm = Formats{}.millimetres(cutaway.gap.mm.value_or(0));
    switch (cutaway.gap.ground) {
    case GapGround::Between:
        return tr("The gap is drawn at about %1 mm, between this coupling’s locked and part-seated readings.")
            .arg(mm);
    case GapGround::LooksOwn:
        return tr("The gap may still read %1 mm, as if locked.").arg(mm);
    case GapGround::NeverShown:
        return tr("The part-seated gap of this coupling was never measured: it is unknown, and drawn "
                  "schematically.");
    case GapGround::NoReadings:
        return tr("This coupling has no readings yet: the gap is drawn schematically.");
    case GapGround::NoReading:
        return tr("What a leaf says now is no reading.");
    case GapGround::Own:
        break;
    }
    return cutaway.state == JointState::PartSeated
               ? tr("Gap %1 mm, the middle of its part-seated readings.").arg(mm)
               : tr("Gap %1 mm, the middle of its locked readings.").arg(mm);
}

QString LessonPictureWords::leafGoes(const Cutaway& cutaway)
{
    if (!cutaway.hasSleeve)
        return tr("In this drawing the leaf goes between the plunger tab and the collar.");
    return cutaway.gap.fromHousing
               ? tr("In this drawing the leaf goes between the edge of the socket and the sleeve.")
               : tr("In this drawing the leaf goes between the plunger tab and the sleeve.");
}

QString LessonPictureWords::layoutDoubt(const DrawnLayout& drawn)
{
    if (drawn.unlikeEntered)
        return tr(
            "Its part-seated gap was read on the other side than its layout lets expect: it is drawn as "
            "it was read. Look at the layout in Set up.");
    if (!drawn.isSaid)
        return tr(
            "Nobody has said how plunger and sleeve stand to each other here, so the drawing may differ. "
            "Look at the real one with somebody who knows it.");
    return {};
}

QString LessonPictureWords::cutaway(const Cutaway& cutaway)
{
    QStringList sentences;
    sentences << tr("%1.", "state of a joint").arg(title(cutaway.state).front());
    sentences << caption(cutaway);
    sentences << tr("Witness hole %1.", "clear, half hidden, hidden").arg(hole(cutaway));
    sentences << leafGoes(cutaway) << gapSentence(cutaway) << schematic() << layoutDoubt(cutaway.drawn);
    sentences.removeAll(QString{});
    return sentences.join(QLatin1Char(' '));
}

QString LessonPictureWords::schematic()
{
    return tr("Schematic: only the gap is to scale, from this coupling’s own readings.");
}

QString LessonPictureWords::ball() { return tr("ball"); }
QString LessonPictureWords::noBall() { return tr("no ball"); }
QString LessonPictureWords::socket() { return tr("socket"); }
QString LessonPictureWords::plunger() { return tr("plunger"); }
QString LessonPictureWords::spring() { return tr("spring"); }
QString LessonPictureWords::sleeve() { return tr("sleeve"); }
QString LessonPictureWords::finger() { return tr("finger", "springy, inside the sleeve; holds the tab"); }
QString LessonPictureWords::collar() { return tr("collar"); }
QString LessonPictureWords::stop() { return tr("stop", "ring on the rod that the sleeve comes to"); }

QString LessonPictureWords::tab(const Cutaway& cutaway)
{
    if (cutaway.plungerBack < 0.2)
        return tr("tab");
    return cutaway.drawn.layout == Layout::B ? tr("tab short") : tr("tab out of place");
}

QString LessonPictureWords::thread(bool shows) { return shows ? tr("thread shows") : tr("thread"); }

QString LessonPictureWords::hole(const Cutaway& cutaway)
{
    if (cutaway.pinIn)
        return tr("clear, pin in it");
    if (cutaway.holeClear >= 1)
        return tr("clear");
    return cutaway.holeClear > 0.02 ? tr("half hidden") : tr("hidden");
}

QString LessonPictureWords::witnessHole(const Cutaway& cutaway)
{
    return tr("witness hole %1", "clear, half hidden, hidden").arg(hole(cutaway));
}

QString LessonPictureWords::drawnNotAPhoto() { return tr("Drawn by the program, not a photo."); }
QString LessonPictureWords::cutawayName() { return tr("The joint cut open"); }

QString LessonPictureWords::cutawayKeys()
{
    return tr("Arrow keys move the ball, Home takes it out as far as it is caught, End seats it. S moves the "
              "sleeve, P the pin, B takes the ball away or puts it back.");
}

QString LessonPictureWords::sideName(AccessSide side)
{
    switch (side) {
    case AccessSide::Below:
        return tr("below");
    case AccessSide::Left:
        return tr("the left");
    case AccessSide::Right:
        return tr("the right");
    case AccessSide::Front:
        return tr("the front");
    case AccessSide::Rear:
        return tr("the rear");
    case AccessSide::Above:
    case AccessSide::Unknown:
        break;
    }
    return tr("above");
}

QStringList LessonPictureWords::seenFrom(AccessSide side, bool isMirror)
{
    const QString name = sideName(side);
    if (isMirror)
        return {tr("in a mirror, from %1").arg(name), tr("mirror")};
    return {tr("through the hatch, from %1").arg(name), tr("from %1").arg(name)};
}

QString LessonPictureWords::partName(JointPart part)
{
    switch (part) {
    case JointPart::PlungerNose:
        return tr("plunger nose");
    case JointPart::Tab:
        return tr("tab");
    case JointPart::WitnessHole:
        return tr("witness hole");
    case JointPart::SleeveStop:
        return tr("front edge of the sleeve");
    case JointPart::Thread:
        return tr("rod before the sleeve");
    case JointPart::Gap:
        return tr("place of the leaf");
    case JointPart::Ball:
        break;
    }
    return tr("mouth of the socket");
}

namespace {

QString namesOf(const std::vector<JointPart>& parts)
{
    QStringList names;
    for (const JointPart part : parts)
        names << LessonPictureWords::partName(part);
    return SentenceParts::list(names);
}

} // namespace

QStringList LessonPictureWords::hatchList(const HatchParts& parts)
{
    QStringList sentences;
    if (!parts.seen.empty())
        sentences << tr("In view: %1.").arg(namesOf(parts.seen));
    if (!parts.dark.empty())
        sentences << tr("Dark without a torch: %1.").arg(namesOf(parts.dark));
    if (!parts.hidden.empty())
        sentences << tr("Hidden from here: %1.").arg(namesOf(parts.hidden));
    return sentences;
}

QString LessonPictureWords::seenPart(JointPart part, const Cutaway& cutaway)
{
    switch (part) {
    case JointPart::Ball:
        if (!cutaway.ball)
            return tr("There is no ball in the socket.");
        return std::abs(cutaway.ball->y) < 1 ? tr("The ball lies at the bottom of the socket.")
                                             : tr("The ball stands high in the socket.");
    case JointPart::PlungerNose:
        return cutaway.plungerBack < 1 ? tr("The nose is fully out.") : tr("The nose is held back.");
    case JointPart::Tab:
        return cutaway.plungerBack < 1 ? tr("The tab stands at its place.")
                                       : tr("The tab does not stand at its place.");
    case JointPart::WitnessHole:
        return tr("The witness hole is %1.", "clear, half hidden, hidden").arg(hole(cutaway));
    case JointPart::SleeveStop:
        return cutaway.sleeve.atStop ? tr("The sleeve is at its stop.")
                                     : tr("The sleeve is not at its stop.");
    case JointPart::Thread:
        return cutaway.sleeve.threadShowing > 0.5 ? tr("Thread shows.") : tr("No thread shows.");
    case JointPart::Gap:
        break;
    }
    return {};
}

QString LessonPictureWords::hatch(const Cutaway& cutaway, const HatchParts& parts, const HatchSight& sight,
                                  bool namesState)
{
    QStringList sentences;
    if (namesState)
        sentences << tr("%1.", "state of a joint").arg(state(cutaway.state));
    sentences << (sight.mirror ? tr("Seen from %1, and in a mirror from %2.")
                                     .arg(sideName(sight.side), sideName(*sight.mirror))
                               : tr("Seen from %1.").arg(sideName(sight.side)));
    sentences << (sight.torch ? tr("With a torch.") : tr("Without a torch."));
    for (const JointPart part : parts.seen)
        sentences << seenPart(part, cutaway);
    if (parts.seen.empty())
        sentences << tr("Nothing is in sight that tells how it stands.");
    for (const QString& sentence : hatchList(parts))
        sentences << sentence;
    sentences.removeAll(QString{});
    return sentences.join(QLatin1Char(' '));
}

QString LessonPictureWords::lockedCount(int count) { return tr("%n locked reading(s)", nullptr, count); }

QString LessonPictureWords::partSeatedCount(int count)
{
    return tr("%n part-seated on purpose", "readings", count);
}

QString LessonPictureWords::asFoundCount(int count)
{
    return tr("%n outside or part-seated at a rigging", "readings", count);
}

QString LessonPictureWords::notSecuredCount(int count)
{
    return tr("%n not secured at a rigging", "readings", count);
}

QString LessonPictureWords::neverPartSeated() { return tr("none noted as part-seated"); }

QStringList LessonPictureWords::nothingBetween()
{
    return {tr("nothing was ever seen between"), tr("nothing between")};
}

namespace {

QStringList intervalsOf(const std::vector<GapInterval>& readings)
{
    QStringList all;
    for (const GapInterval& one : readings)
        all << Formats{}.interval(one);
    return all;
}

} // namespace

QString LessonPictureWords::readingsStrip(const ReadingsStripView& view)
{
    const Formats formats;
    const QString comma = tr(", ", "between values");
    QStringList sentences;
    if (view.locked.empty()) {
        sentences << tr("No locked reading yet.");
    } else {
        const auto [low, high] = std::ranges::minmax_element(view.locked, {}, drawnAt);
        sentences << tr("%n locked reading(s), from %1 to %2.", nullptr, static_cast<int>(view.locked.size()))
                         .arg(formats.interval(*low), formats.interval(*high));
    }
    if (view.band)
        sentences << tr("Band %1.").arg(formats.band(view.band->inner));
    if (!view.partSeated.empty())
        sentences << tr("Part-seated on purpose: %1.").arg(intervalsOf(view.partSeated).join(comma));
    if (!view.asFound.empty())
        sentences << tr("Found outside its band or part-seated at a rigging: %1.")
                         .arg(intervalsOf(view.asFound).join(comma));
    if (!view.notSecured.empty())
        sentences << tr("Found not secured at a rigging: %1.").arg(intervalsOf(view.notSecured).join(comma));
    if (view.partSeated.empty() && view.asFound.empty())
        sentences << tr("No reading was noted as part-seated.");
    for (const EmptyStretch& one : emptyBetween(view))
        sentences << tr("Between %1 and %2 mm nothing was ever seen.")
                         .arg(formats.millimetres(one.from), formats.millimetres(one.to));
    return sentences.join(QLatin1Char(' '));
}

} // namespace rig
