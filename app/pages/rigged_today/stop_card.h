#pragma once

#include "app/theme/theme.h"

#include <QFrame>

class QLabel;

namespace rig {

class MarkWidget;

// What to do at a stop: the first thing, and what else; the second may be empty.
struct StopAdvice
{
    QString first;
    QString then;
};

// Stop: why, and whom to call.
class StopCard : public QFrame
{
    Q_OBJECT

public:
    explicit StopCard(QWidget* parent = nullptr);

    void setLook(const Look& look);
    void say(const QString& why, const StopAdvice& advice);

protected:
    void hideEvent(QHideEvent* event) override;

private:
    MarkWidget* m_mark = nullptr;
    QLabel* m_why = nullptr;
    QLabel* m_call = nullptr;
    QLabel* m_todo = nullptr;
};

} // namespace rig
