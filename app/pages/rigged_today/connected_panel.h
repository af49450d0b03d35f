#pragma once

#include "app/pages/rigged_today/rigged_today_view.h"

#include <QWidget>

#include <map>

class QPushButton;

namespace rig {

class ChoiceTile;
class FlowScroll;

// Who connected each side: asked once at the start of a record, one press a name, and open to be put right as
// long as the record is.
class ConnectedPanel : public QWidget
{
    Q_OBJECT

public:
    explicit ConnectedPanel(QWidget* parent = nullptr);

    // `view` has a record to work on. `onward`: what Enter leads to after the last side.
    void display(const RiggedTodayView& view, const RiggingSession& session, const QString& onward);
    // A key pressed anywhere on the page. False when it means nothing here.
    bool takeKey(QKeyEvent* event);

signals:
    void stated(rig::ConnectedPress press);
    void nextAsked();

private:
    void displaySide(const SideNow& side, bool isAsked);
    void press(Side side, std::size_t option);

    std::vector<Person> m_persons;
    PersonStandings m_people;
    std::optional<Side> m_asked;
    std::map<Side, ChoiceTile*> m_tiles;
    FlowScroll* m_scroll = nullptr;
    QPushButton* m_next = nullptr;
};

} // namespace rig
