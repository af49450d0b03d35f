#include "app/pages/rigged_today/joint_play_card.h"

#include "app/widgets/parts.h"
#include "app/widgets/still_box.h"
#include "app/wording/entry_words.h"
#include "app/wording/joint_play_words.h"
#include "core/measure/gap_entry.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QVBoxLayout>

namespace rig {

JointPlayCard::JointPlayCard(QWidget* parent) : QFrame{parent}
{
    setProperty("card", true);
    setObjectName("jointPlayCard");
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(12, 8, 12, 10);
    layout->setSpacing(6);
    layout->addWidget(labelOf(JointPlayWords::heading(), "label"));
    layout->addWidget(labelOf(JointPlayWords::how(), "soft"));
    auto* grid = new QGridLayout;
    m_along = addWay(grid, JointPlayWords::along(), JointPlayWords::measuredAlong(), "playAlong");
    m_across = addWay(grid, JointPlayWords::across(), JointPlayWords::measuredAcross(), "playAcross");
    auto* note = new QLabel{JointPlayWords::note()};
    note->setTextFormat(Qt::PlainText);
    m_note = new QLineEdit;
    m_note->setObjectName("playNote");
    m_note->setAccessibleName(JointPlayWords::noteHint());
    m_note->setPlaceholderText(JointPlayWords::noteHint());
    note->setBuddy(m_note);
    grid->addWidget(note, 2, 0);
    grid->addWidget(m_note, 2, 1, 1, 2);
    grid->setColumnStretch(2, 1);
    layout->addLayout(grid);
    m_problem = labelOf({}, "problem", "playProblem");
    m_problem->hide();
    layout->addWidget(m_problem);
    auto* buttons = new QHBoxLayout;
    auto* keep = buttonOf(JointPlayWords::keep(), "playKeep", "primary");
    auto* close = buttonOf(JointPlayWords::close(), "playClose");
    buttons->addWidget(keep);
    buttons->addWidget(close);
    buttons->addStretch(1);
    layout->addLayout(buttons);
    connect(keep, &QPushButton::clicked, this, &JointPlayCard::keep);
    connect(close, &QPushButton::clicked, this, &JointPlayCard::close);
    hide();
}

JointPlayCard::Way JointPlayCard::addWay(QGridLayout* grid, const QString& label, const QString& measured,
                                         const char* name)
{
    Way way;
    const int row = grid->rowCount() == 1 && grid->count() == 0 ? 0 : grid->rowCount();
    auto* text = new QLabel{label};
    text->setTextFormat(Qt::PlainText);
    way.felt = new StillBox;
    way.felt->setObjectName(QLatin1String(name));
    way.felt->setAccessibleName(withoutMnemonic(label));
    for (const PlayFelt felt : {PlayFelt::NotTried, PlayFelt::None, PlayFelt::Felt})
        way.felt->addItem(JointPlayWords::felt(felt));
    text->setBuddy(way.felt);
    way.millimetres = new QLineEdit;
    way.millimetres->setObjectName(QLatin1String(name) + QLatin1String("Mm"));
    way.millimetres->setAccessibleName(withoutMnemonic(measured));
    way.millimetres->setPlaceholderText(JointPlayWords::measured());
    grid->addWidget(text, row, 0);
    grid->addWidget(way.felt, row, 1);
    grid->addWidget(way.millimetres, row, 2);
    return way;
}

void JointPlayCard::open()
{
    show();
    m_along.felt->setFocus();
}

bool JointPlayCard::close()
{
    if (isHidden())
        return false;
    for (const Way& way : {m_along, m_across}) {
        way.felt->setCurrentIndex(0);
        way.millimetres->clear();
    }
    m_note->clear();
    m_problem->hide();
    hide();
    if (parentWidget())
        parentWidget()->setFocus();
    return true;
}

std::optional<PlayFound> JointPlayCard::read(const Way& way, QString& problem) const
{
    PlayFound found{static_cast<PlayFelt>(way.felt->currentIndex()), std::nullopt};
    const QString typed = way.millimetres->text().trimmed();
    if (typed.isEmpty())
        return found;
    const GapEntry entry = parseGap(typed.toStdString());
    if (const auto* refused = std::get_if<EntryProblem>(&entry)) {
        problem = EntryWords::refusal(*refused, typed);
        return std::nullopt;
    }
    found.measured = std::get<Gap>(entry);
    problem = JointPlayWords::refusal(problemOf(found));
    return problem.isEmpty() ? std::optional{found} : std::nullopt;
}

// What is pressed here is meant for this card: no letter answers a question behind it, and Enter goes nowhere
// else.
void JointPlayCard::keyPressEvent(QKeyEvent* event)
{
    const bool enter = isEnter(*event);
    if (auto* button = enter ? qobject_cast<QPushButton*>(focusWidget()) : nullptr)
        button->click();
    else if (enter)
        keep();
    event->accept();
}

void JointPlayCard::keep()
{
    QString problem;
    const auto along = read(m_along, problem);
    const auto across = along ? read(m_across, problem) : std::nullopt;
    if (along && across && along->felt == PlayFelt::NotTried && across->felt == PlayFelt::NotTried)
        problem = JointPlayWords::tryOne();
    sayIn(m_problem, problem);
    if (problem.isEmpty())
        emit keepAsked(*along, *across, m_note->text().trimmed());
}

} // namespace rig
