#include "app/window/top_bar.h"

#include "app/widgets/parts.h"
#include "app/wording/window_words.h"

#include <QAction>
#include <QEvent>
#include <QFontMetrics>
#include <QHBoxLayout>
#include <QMenu>

#include <algorithm>

namespace rig {

namespace {

constexpr int kMargin = 16;
constexpr int kSpacing = 6;
constexpr int kBeforeFile = 12;
constexpr int kButtonRoom = 30; // beside a name, for the frame and the room of the style sheet

QString momentName(std::size_t moment, bool isShort)
{
    switch (static_cast<Moments>(moment)) {
    case Moments::RiggedToday:
        return isShort ? WindowWords::riggedShort() : WindowWords::riggedToday();
    case Moments::Trends:
        return WindowWords::trends();
    case Moments::BeforeTheAnnual:
        return isShort ? WindowWords::annualShort() : WindowWords::beforeTheAnnual();
    case Moments::KnowThisAirframe:
        return isShort ? WindowWords::knowShort() : WindowWords::knowThisAirframe();
    case Moments::SetUp:
        break;
    }
    return WindowWords::setUp();
}

} // namespace

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
    layout->setContentsMargins(kMargin, 8, kMargin, 8);
    layout->setSpacing(kSpacing);
    addAirframe(layout);
    layout->addStretch(1);
    addMoments(layout);
    layout->addSpacing(kBeforeFile);
    m_file = buttonOf(WindowWords::fileMenu(), "fileMenu", "bar");
    m_file->setMenu(fileMenu);
    m_file->setFocusPolicy(Qt::TabFocus); // a press leaves the keys with the page
    layout->addWidget(m_file);
}

// What the type's name and the long names need is worked out, not tried: each try would lay the bar out anew.
int TopBar::widthOf(Naming naming) const
{
    int width = m_file->sizeHint().width();
    if (!m_registration->isHidden())
        width += m_registration->sizeHint().width();
    if (naming == Naming::Whole)
        width += m_type->sizeHint().width() + kSpacing;
    for (std::size_t i = 0; i < m_moments.size(); ++i) {
        QFont font = m_moments[i]->font();
        font.setWeight(QFont::DemiBold); // the chosen one's
        width += QFontMetrics{font}.horizontalAdvance(momentName(i, naming == Naming::Short)) + kButtonRoom +
                 kSpacing;
    }
    return width + 2 * kMargin + kSpacing + kBeforeFile;
}

// The first that fits; the last one is short enough for the largest text in the smallest window.
void TopBar::fit()
{
    Naming fitting = Naming::Short;
    for (const Naming naming : {Naming::WithoutType, Naming::Whole})
        if (widthOf(naming) <= width())
            fitting = naming;
    for (std::size_t i = 0; i < m_moments.size(); ++i)
        m_moments[i]->setText(momentName(i, fitting == Naming::Short));
    m_type->setVisible(fitting == Naming::Whole);
}

bool TopBar::event(QEvent* event)
{
    if (event->type() == QEvent::Resize || event->type() == QEvent::LayoutRequest)
        fit();
    return QWidget::event(event);
}

void TopBar::addAirframe(QHBoxLayout* layout)
{
    m_registration = buttonOf({}, "registration", "registration");
    m_registration->setToolTip(WindowWords::chooseAirframe());
    m_registration->setFocusPolicy(Qt::TabFocus);
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
    for (std::size_t i = 0; i < m_moments.size(); ++i) {
        const int number = static_cast<int>(i) + 1;
        const QString name = momentName(i, false);
        auto* button = new QPushButton{name};
        button->setAccessibleName(name);
        button->setProperty("kind", "bar");
        button->setCheckable(true);
        button->setAutoExclusive(true);
        button->setObjectName(QStringLiteral("moment%1").arg(number));
        button->setToolTip(WindowWords::momentWithKey(name, number));
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
