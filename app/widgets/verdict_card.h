#pragma once

#include "app/theme/theme.h"
#include "core/judgement/judgement.h"
#include "core/measure/gap_interval.h"
#include "core/review/coupling_standing.h"

#include <QFrame>

#include <optional>

class QLabel;
class QPushButton;

namespace rig {

class MarkWidget;

// The rank of the style sheet that a card of this has.
const char* rankOf(Says says);

// What the numbers say of one reading, and always that it is one sign only: the verdict, where the reading
// lies, what to do next. The rest is shown on asking. Where the coupling stands worse than that, its mark and
// its word are the coupling's, and the reading's own verdict is a sentence.
class VerdictCard : public QFrame
{
    Q_OBJECT

public:
    explicit VerdictCard(QWidget* parent = nullptr);

    void setLook(const Look& look);
    // The day of a rigging that is typed in from a paper of another day: nothing is stopped on it any more.
    void setPaperDay(const QString& day) { m_paperDay = day; }
    // It is the second person's own reading: nobody comes after them.
    void setSecond(bool isSecond) { m_isSecond = isSecond; }
    void show(const Judgement& judgement, const GapInterval& reading, const CouplingStanding& standing,
              const QString& callName, const QString& callPhone);
    // A reading of a joint that was found part-seated or not secured: not judged, and enough to stop.
    void showAsFound(const GapInterval& reading, Says foundAs, const CouplingStanding& standing,
                     const QString& callName, const QString& callPhone);
    // Beside either: the joint was stopped by something else than its gap, and nothing more is done at it.
    void showStopped();
    // Nothing read yet: says what to do instead.
    void showPrompt(const QString& sentence);
    bool prompts(const QString& sentence) const;
    // "Saved 09:31.", that it is being saved, or that it is not.
    void setKept(const QString& sentence);
    // Whether more can be shown on asking.
    bool hasMore() const;
    // The band's origin and what part-seated showed, or no longer. Stays as it was asked for.
    void toggleMore();
    // What past readings show of the coupling: a sentence of its own that changes no mark and no word. Empty:
    // none.
    void setMovement(const QString& sentence);
    // What its mark says; empty for a prompt.
    std::optional<Says> says() const { return m_says; }

private:
    QString cautionFor(Verdict verdict, const QString& callName, const QString& callPhone) const;
    void setRank(const char* rank);
    void showParts(bool shown);
    void describe();

    std::optional<Says> m_says;
    bool m_arePartsShown = false;
    MarkWidget* m_mark = nullptr;
    QLabel* m_word = nullptr;
    QLabel* m_explanation = nullptr;
    QLabel* m_caution = nullptr;
    QLabel* m_more = nullptr;
    QPushButton* m_ask = nullptr;
    bool m_isMoreAsked = false;
    bool m_isSecond = false;
    QLabel* m_movement = nullptr;
    QLabel* m_kept = nullptr;
    QString m_paperDay;
};

} // namespace rig
