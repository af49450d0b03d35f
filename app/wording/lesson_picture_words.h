#pragma once

#include "core/lesson/hatch_view.h"
#include "core/views/readings_strip.h"

#include <QCoreApplication>
#include <QString>
#include <QStringList>

namespace rig {

// Words in and about the pictures of "Know this airframe".
class LessonPictureWords
{
    Q_DECLARE_TR_FUNCTIONS(LessonPictureWords)

public:
    static QString state(JointState state);               // "Locked", one or two words
    static QStringList title(JointState state);           // the longest first
    static QStringList figure(const CutawayGap& gap);     // what stands at the gap, the longest first
    static QString caption(const Cutaway& cutaway);       // a sentence or two below the picture
    static QString cutaway(const Cutaway& cutaway);       // everything, for who does not see it
    static QString schematic();                           // what of it is to scale
    static QString leafGoes(const Cutaway& cutaway);      // where the drawing has the gap
    static QString layoutDoubt(const DrawnLayout& drawn); // what is not known of it, or nothing

    static QString ball();
    static QString noBall();
    static QString socket();
    static QString plunger();
    static QString spring();
    static QString tab(const Cutaway& cutaway);
    static QString sleeve();
    static QString finger();
    static QString collar();
    static QString stop();
    static QString thread(bool shows);
    static QString hole(const Cutaway& cutaway); // clear, half hidden, hidden
    static QString witnessHole(const Cutaway& cutaway);

    static QString drawnNotAPhoto(); // in a picture that stands in place of one
    static QString cutawayName();
    static QString cutawayKeys();

    static QString sideName(AccessSide side);                    // "above"
    static QStringList seenFrom(AccessSide side, bool isMirror); // the longest first
    static QString partName(JointPart part);
    static QStringList hatchList(const HatchParts& parts); // seen, dark, hidden, a sentence each
    // What is seen, as an eye would see it; the state itself is named only where that is wanted.
    static QString hatch(const Cutaway& cutaway, const HatchParts& parts, const HatchSight& sight,
                         bool namesState);

    static QString lockedCount(int count);
    static QString partSeatedCount(int count);
    static QString asFoundCount(int count);
    static QString notSecuredCount(int count);
    static QString neverPartSeated();
    static QStringList nothingBetween(); // the longest first
    static QString readingsStrip(const ReadingsStripView& view);

private:
    static QString seenPart(JointPart part, const Cutaway& cutaway);
    static QString gapSentence(const Cutaway& cutaway);
};

} // namespace rig
