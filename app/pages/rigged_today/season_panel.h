#pragma once

#include "app/pages/rigged_today/rigged_today_view.h"

#include <QWidget>

#include <map>

class QCheckBox;
class QLabel;
class QPushButton;

namespace rig {

// The list of the first rigging of a season. What is ticked is kept at once and stays ticked.
class SeasonPanel : public QWidget
{
    Q_OBJECT

public:
    explicit SeasonPanel(QWidget* parent = nullptr);

    void display(const RiggedTodayView& view);
    // A key pressed anywhere on the page. False when it means nothing here.
    bool takeKey(QKeyEvent* event);

signals:
    void ticked(rig::TickKind kind);
    void nextAsked();

private:
    std::map<TickKind, QCheckBox*> m_boxes;
    QLabel* m_title = nullptr;
    QLabel* m_stood = nullptr; // how long, after a layoff
    QLabel* m_why = nullptr;
    QPushButton* m_next = nullptr;
};

} // namespace rig
