#pragma once

#include "core/review/airframe_review.h"

#include <QFrame>

class QLabel;

namespace rig {

// How the chosen coupling moved, in sentences made of the numbers: drift with its interval, what it would
// come to by the annual, scatter, step; and what to look at, never a diagnosis.
class MovementCard : public QFrame
{
    Q_OBJECT

public:
    explicit MovementCard(QWidget* parent = nullptr);

    void display(const CouplingReview& coupling, const AirframeReview& review);

private:
    QLabel* m_title = nullptr;
    QLabel* m_figures = nullptr;
    QLabel* m_lookAt = nullptr;
};

} // namespace rig
