#include "app/pages/setup/baseline_freeze.h"

#include "app/pages/setup/panel_parts.h"
#include "app/pages/setup/setup_entries.h"
#include "app/widgets/choice_box.h"
#include "app/widgets/parts.h"
#include "app/wording/baseline_words.h"
#include "app/wording/doubt_words.h"
#include "app/wording/formats.h"

#include <QVBoxLayout>

namespace rig {

namespace {

QString obstacleIn(const BaselineSheet& sheet)
{
    switch (sheet.obstacle) {
    case FreezeObstacle::None:
    case FreezeObstacle::AlreadyFrozen:
        return {};
    case FreezeObstacle::TooFewReadings:
        return BaselineWords::tooFewToFreeze(sheet.admitted, kReadingsToFreeze);
    case FreezeObstacle::NoBand:
        return BaselineWords::noBandFromThese();
    case FreezeObstacle::ScatterAtCap:
        return BaselineWords::scatterBlocks();
    case FreezeObstacle::Outlier:
        break;
    }
    return BaselineWords::outlierBlocks();
}

} // namespace

BaselineFreeze::BaselineFreeze(QWidget* parent) : QFrame{parent}
{
    setProperty("card", true);
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(16, 14, 16, 14);
    layout->setSpacing(8);
    layout->addWidget(labelOf(BaselineWords::freezeTitle(), "section"));
    m_sentence = labelOf({}, "body", "freezeSentence");
    layout->addWidget(m_sentence);
    buildNames();
    layout->addWidget(m_names);
    m_note = labelOf({}, "caution", "freezeNote");
    layout->addWidget(m_note);
    m_freeze = buttonOf(BaselineWords::freeze(), "freeze", "primary");
    connect(m_freeze, &QPushButton::clicked, this, &BaselineFreeze::ask);
    layout->addWidget(m_freeze, 0, Qt::AlignLeft);
}

void BaselineFreeze::buildNames()
{
    m_names = new QWidget;
    auto* grid = new ChoiceGrid;
    m_names->setLayout(grid);
    m_first = grid->add(BaselineWords::firstName(), "freezeFirst");
    m_second = grid->add(BaselineWords::secondName(), "freezeSecond");
    for (ChoiceBox* box : {m_first, m_second})
        connect(box, &QComboBox::activated, this, [this] { sayIn(m_note, {}); });
}

void BaselineFreeze::display(const BaselineSheet& sheet, const std::vector<Person>& persons)
{
    const Formats formats;
    QStringList says;
    if (sheet.frozen)
        says << BaselineWords::frozen(formats.moment(sheet.frozen->when), shown(sheet.frozen->first),
                                      shown(sheet.frozen->second))
             << BaselineWords::frozenStays();
    else
        says << BaselineWords::freezeSentence();
    if (sheet.doubted) {
        const QString gauges = DoubtWords::gauges(sheet.doubted->gauges);
        says << (sheet.frozen ? DoubtWords::stayInFrozenList(sheet.doubted->readings, gauges)
                              : DoubtWords::notFrozen(sheet.doubted->readings, gauges));
    }
    m_sentence->setText(says.join(QLatin1Char('\n')));
    m_names->setVisible(!sheet.frozen);
    m_freeze->setVisible(!sheet.frozen);
    sayIn(m_note, obstacleIn(sheet));
    m_freeze->setEnabled(sheet.obstacle == FreezeObstacle::None);
    m_freeze->setAccessibleDescription(m_note->text());
    // Names stay chosen while the readings of one fitting come in, and go with it.
    const std::optional<FittingId> fitting = sheet.fitting ? std::optional{sheet.fitting->id} : std::nullopt;
    const bool same = fitting == m_fitting;
    m_fitting = fitting;
    for (ChoiceBox* box : {m_first, m_second}) {
        const auto chosen = same ? box->chosen<PersonId>() : std::nullopt;
        fillPeople(box, BaselineWords::choosePerson(), persons, chosen);
    }
}

void BaselineFreeze::ask()
{
    if (!m_freeze->isVisibleTo(this) || !m_freeze->isEnabled())
        return;
    const auto first = m_first->chosen<PersonId>();
    const auto second = m_second->chosen<PersonId>();
    if (first && second && *first != *second) {
        emit freezeAsked(*first, *second);
        return;
    }
    sayIn(m_note, BaselineWords::namesFirst());
    (first ? m_second : m_first)->setFocus();
}

} // namespace rig
