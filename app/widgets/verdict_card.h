#pragma once

#include "app/theme/theme.h"
#include "core/judgement/judgement.h"
#include "core/measure/gap_interval.h"

#include <QFrame>

#include <optional>

class QLabel;

namespace rig {

class MarkWidget;

// The rank of the style sheet that a card of this verdict has.
const char* rankOf(Verdict verdict);

// What the numbers say of one reading, and always that it is one sign only.
class VerdictCard : public QFrame
{
    Q_OBJECT

public:
    explicit VerdictCard(QWidget* parent = nullptr);

    void setLook(const Look& look);
    void show(const Judgement& judgement, const GapInterval& reading, const QString& callName,
              const QString& callPhone);
    // Nothing read yet: says what to do instead.
    void showPrompt(const QString& sentence);
    // "Saved 09:31." or why it is not; empty while it is being saved.
    void setKept(const QString& sentence);

private:
    void setRank(const char* rank);

    MarkWidget* m_mark = nullptr;
    QLabel* m_word = nullptr;
    QLabel* m_explanation = nullptr;
    QLabel* m_caution = nullptr;
    QLabel* m_kept = nullptr;
};

} // namespace rig
