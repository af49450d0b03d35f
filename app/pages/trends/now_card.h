#pragma once

#include "app/pages/trends/trends_view.h"
#include "app/theme/theme.h"

#include <QFrame>

class QLabel;

namespace rig {

class MarkWidget;

// What can be said of the chosen coupling now: its latest verdict, how often it was near the edge or outside,
// and the caution that a band is no limit. Nothing about drift.
class NowCard : public QFrame
{
    Q_OBJECT

public:
    explicit NowCard(QWidget* parent = nullptr);

    void display(const CouplingTrend& trend, std::optional<Day> annualDue, Day today);
    void setLook(const Look& look);

private:
    void setRank(const char* rank);

    MarkWidget* m_mark = nullptr;
    QLabel* m_title = nullptr;
    QLabel* m_latest = nullptr;
    QLabel* m_counts = nullptr;
    QLabel* m_caution = nullptr;
};

} // namespace rig
