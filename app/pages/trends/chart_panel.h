#pragma once

#include "app/pages/trends/trends_view.h"
#include "app/theme/theme.h"

#include <QWidget>

class QHBoxLayout;
class QLabel;
class QPushButton;
class QStackedWidget;

namespace rig {

class AxisButtons;
class MovementCard;
class NowCard;
class TrendWidget;

// The chosen coupling: where its band comes from, its readings large, and what can be said now.
class ChartPanel : public QWidget
{
    Q_OBJECT

public:
    explicit ChartPanel(QWidget* parent = nullptr);

    // `review` holds what the trend's coupling moved by.
    void display(const CouplingTrend& trend, const AirframeReview& review, TrendAxis axis, Day today);
    void setAxis(TrendAxis axis);
    void setTableShown(bool shown);
    void setLook(const Look& look);
    void chooseReading(int index);
    int chosenReading() const; // -1: none
    void focusChart();
    // Keys of the chart, which it takes the focus with.
    static bool isForChart(const QKeyEvent& event);
    void takeKey(QKeyEvent* event);
    // The readings of those days; the whole of the history where there are none.
    void lookAtDays(Day from, Day to);
    void lookAtAll();

    bool hasHeightForWidth() const override { return false; } // the splitter around it asks for heights only
    QSize minimumSizeHint() const override;

signals:
    void axisChosen(rig::TrendAxis axis);
    void tableAsked(bool shown);
    void readingChosen(int index);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    QHBoxLayout* makeTop();
    void showHover(const QString& sentence);

    QLabel* m_title = nullptr;
    QLabel* m_band = nullptr;
    QLabel* m_play = nullptr;
    AxisButtons* m_axis = nullptr;
    QPushButton* m_table = nullptr;
    QStackedWidget* m_stack = nullptr;
    TrendWidget* m_chart = nullptr;
    QLabel* m_empty = nullptr;
    QLabel* m_hover = nullptr;
    MovementCard* m_movement = nullptr;
    NowCard* m_now = nullptr;
};

} // namespace rig
