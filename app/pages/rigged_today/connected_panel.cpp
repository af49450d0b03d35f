#include "app/pages/rigged_today/connected_panel.h"

#include "app/widgets/choice_tile.h"
#include "app/widgets/flow_scroll.h"
#include "app/widgets/parts.h"
#include "app/widgets/whole_line.h"
#include "app/widgets/wrap_layout.h"
#include "app/wording/connected_words.h"
#include "app/wording/sign_off_words.h"

#include <QLabel>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

namespace rig {

ConnectedPanel::ConnectedPanel(QWidget* parent) : QWidget{parent}
{
    auto* whole = new QVBoxLayout{this};
    whole->setContentsMargins(0, 0, 0, 0);
    whole->setSpacing(0);
    auto* inside = new QWidget;
    auto* layout = new QVBoxLayout{inside};
    layout->setContentsMargins(28, 24, 28, 12);
    layout->setSpacing(12);
    layout->addWidget(labelOf(ConnectedWords::place(), "title"));
    layout->addWidget(labelOf(ConnectedWords::sentence(), "body"));
    for (const Side side : {Side::Left, Side::Right, Side::None}) {
        auto* tile = new ChoiceTile{QStringLiteral("connected%1_").arg(static_cast<int>(side))};
        tile->setObjectName(QStringLiteral("connectedSide%1").arg(static_cast<int>(side)));
        connect(tile, &ChoiceTile::pressed, this,
                [this, side](int option) { press(side, static_cast<std::size_t>(option)); });
        layout->addWidget(tile);
        m_tiles.emplace(side, tile);
    }
    layout->addStretch(1);
    m_scroll = new FlowScroll{inside};
    whole->addWidget(m_scroll, 1);
    auto* rule = new QFrame;
    rule->setProperty("rule", true);
    whole->addWidget(rule);
    auto* row = new WrapLayout{8, false};
    row->setContentsMargins(28, 10, 28, 12);
    row->addWidget(new WholeLine{ConnectedWords::keys(), "soft"});
    m_next = buttonOf({}, "connectedNext", "primary");
    row->addWidget(m_next);
    connect(m_next, &QPushButton::clicked, this, &ConnectedPanel::nextAsked);
    whole->addLayout(row);
}

void ConnectedPanel::display(const RiggedTodayView& view, const RiggingSession& session,
                             const QString& onward)
{
    m_persons = view.persons;
    m_people = view.people;
    m_asked = session.side;
    for (const auto& [side, tile] : m_tiles) {
        const auto now = std::ranges::find(view.now->sides, side, &SideNow::side);
        tile->setVisible(now != view.now->sides.end());
        if (now != view.now->sides.end())
            displaySide(*now, session.side == side);
    }
    if (m_asked) // once the layout has settled
        QTimer::singleShot(0, m_scroll,
                           [this, tile = m_tiles.at(*m_asked)] { m_scroll->bringIntoView(tile); });
    m_next->setText(nextSide(session, *view.now) ? ConnectedWords::nextSide() : onward);
}

void ConnectedPanel::displaySide(const SideNow& side, bool isAsked)
{
    const auto option = [&side](const QString& text, const QString& name, bool isChosen, bool isDoubt) {
        return ChoiceTile::Option{text, ConnectedWords::spoken(side.side, name), isChosen, isDoubt};
    };
    std::vector<ChoiceTile::Option> options;
    for (const Person& person : m_persons) {
        const QString name = QString::fromStdString(person.name);
        const bool isNamed =
            side.connectedBy && std::ranges::find(*side.connectedBy, person.id) != side.connectedBy->end();
        options.push_back(
            option(ConnectedWords::person(name, static_cast<int>(options.size()) + 1), name, isNamed, false));
    }
    options.push_back(
        option(ConnectedWords::notKnownWithKey(), ConnectedWords::notKnown(), side.isNotKnown(), true));
    ChoiceTile* tile = m_tiles.at(side.side);
    tile->setAsked(isAsked);
    QStringList hint{side.isSaid() ? ConnectedWords::severalMay() : ConnectedWords::notSaidYet()};
    for (const Person& person : m_persons) {
        const bool isNamed =
            side.connectedBy && std::ranges::find(*side.connectedBy, person.id) != side.connectedBy->end();
        if (const auto stands = m_people.find(person.id); isNamed && stands != m_people.end())
            hint << SignOffWords::named(QString::fromStdString(person.name), stands->second);
    }
    tile->display(ConnectedWords::question(side.side), hint.join(QStringLiteral(" · ")), options);
}

// The last option is that it is not known.
void ConnectedPanel::press(Side side, std::size_t option)
{
    ConnectedPress pressed{side, {}};
    if (option < m_persons.size())
        pressed.person = m_persons[option].id;
    emit stated(pressed);
}

bool ConnectedPanel::takeKey(QKeyEvent* event)
{
    if (isEnter(*event))
        return m_next->click(), true;
    if (!m_asked)
        return false;
    if (isKey(*event, ConnectedWords::keyNotKnown()))
        return press(*m_asked, m_persons.size()), true;
    const int digit = event->text().size() == 1 ? event->text().front().digitValue() : -1;
    if (event->modifiers() & ~Qt::KeypadModifier || digit < 1 || digit > static_cast<int>(m_persons.size()))
        return false;
    press(*m_asked, static_cast<std::size_t>(digit) - 1);
    return true;
}

} // namespace rig
