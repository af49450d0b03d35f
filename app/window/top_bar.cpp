#include "app/window/top_bar.h"

#include "app/widgets/parts.h"
#include "app/wording/window_words.h"

#include <QAction>
#include <QHBoxLayout>
#include <QMenu>

#include <algorithm>

namespace rig {

QString choiceOf(const Airframe& airframe)
{
    return WindowWords::airframeChoice(QString::fromStdString(airframe.registration),
                                       QString::fromStdString(airframe.type));
}

TopBar::TopBar(QMenu* fileMenu, QWidget* parent) : QWidget{parent}
{
    setProperty("bar", true);
    setAttribute(Qt::WA_StyledBackground);
    auto* layout = new QHBoxLayout{this};
    layout->setContentsMargins(16, 8, 16, 8);
    layout->setSpacing(6);
    addAirframe(layout);
    layout->addStretch(1);
    addMoments(layout);
    layout->addSpacing(12);
    auto* file = buttonOf(WindowWords::fileMenu(), "fileMenu", "bar");
    file->setMenu(fileMenu);
    layout->addWidget(file);
}

void TopBar::addAirframe(QHBoxLayout* layout)
{
    m_registration = buttonOf({}, "registration", "registration");
    m_registration->setToolTip(WindowWords::chooseAirframe());
    m_airframes = new QMenu{m_registration};
    connect(m_airframes, &QMenu::aboutToShow, this, &TopBar::airframesOpened);
    connect(m_registration, &QPushButton::clicked, this, [this] {
        if (!m_airframes->isEmpty())
            m_airframes->popup(m_registration->mapToGlobal(QPoint{0, m_registration->height()}));
    });
    m_type = new QLabel;
    m_type->setTextFormat(Qt::PlainText);
    layout->addWidget(m_registration);
    layout->addWidget(m_type);
}

void TopBar::addMoments(QHBoxLayout* layout)
{
    const std::array<QString, 5> names{WindowWords::riggedToday(), WindowWords::trends(),
                                       WindowWords::beforeTheAnnual(), WindowWords::knowThisAirframe(),
                                       WindowWords::setUp()};
    for (std::size_t i = 0; i < names.size(); ++i) {
        const int number = static_cast<int>(i) + 1;
        auto* button = new QPushButton{names[i]};
        button->setProperty("kind", "bar");
        button->setCheckable(true);
        button->setAutoExclusive(true);
        button->setObjectName(QStringLiteral("moment%1").arg(number));
        button->setToolTip(WindowWords::momentWithKey(names[i], number));
        connect(button, &QPushButton::clicked, this,
                [this, i] { emit momentChosen(static_cast<Moments>(i)); });
        m_moments[i] = button;
        layout->addWidget(button);
    }
}

void TopBar::display(const std::vector<Airframe>& airframes, std::optional<AirframeId> chosen, bool hasFile)
{
    const auto now = std::ranges::find_if(
        airframes, [&chosen](const Airframe& airframe) { return chosen == airframe.id; });
    const bool isChosen = now != airframes.end();
    m_registration->setText(isChosen ? QString::fromStdString(now->registration) : WindowWords::noAirframe());
    m_registration->setAccessibleName(m_registration->text());
    m_registration->setVisible(hasFile);
    m_type->setText(isChosen ? QString::fromStdString(now->type) : QString{});
    for (QPushButton* button : m_moments)
        button->setEnabled(hasFile);
    m_airframes->clear();
    for (const Airframe& airframe : airframes)
        connect(m_airframes->addAction(choiceOf(airframe)), &QAction::triggered, this,
                [this, id = airframe.id] { emit airframeChosen(id); });
}

void TopBar::nameAirframes(const QStringList& choices)
{
    const QList<QAction*> actions = m_airframes->actions();
    for (qsizetype i = 0; i < std::min(actions.size(), choices.size()); ++i)
        actions[i]->setText(choices[i]);
}

void TopBar::check(Moments moment)
{
    m_moments[static_cast<std::size_t>(moment)]->setChecked(true);
}

void TopBar::checkNone()
{
    for (QPushButton* button : m_moments)
        if (button->isChecked())
            chooseNeither({button});
}

void TopBar::openAirframes()
{
    m_registration->click();
}

} // namespace rig
