#pragma once

#include "app/theme/theme.h"

#include <QFrame>

class QLabel;

namespace rig {

class MarkWidget;

// Stop: why, and whom to call.
class StopCard : public QFrame
{
    Q_OBJECT

public:
    explicit StopCard(QWidget* parent = nullptr);

    void setLook(const Look& look);
    // `todo`: what else to do meanwhile; may be empty.
    void say(const QString& why, const QString& whomToCall, const QString& todo = {});

private:
    MarkWidget* m_mark = nullptr;
    QLabel* m_why = nullptr;
    QLabel* m_call = nullptr;
    QLabel* m_todo = nullptr;
};

} // namespace rig
