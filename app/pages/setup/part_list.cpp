#include "app/pages/setup/part_list.h"

#include "app/pages/setup/panel_parts.h"
#include "app/pages/setup/setup_entries.h"
#include "app/widgets/choice_box.h"
#include "app/widgets/flow_scroll.h"
#include "app/widgets/parts.h"
#include "app/widgets/row_list.h"
#include "app/wording/paper_words.h"
#include "app/wording/setup_words.h"
#include "app/wording/surface_words.h"

#include <QLabel>
#include <QProgressBar>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace rig {

QString titleOf(SetUpPart part)
{
    switch (part) {
    case SetUpPart::Airframe:
        return SetUpWords::airframePart();
    case SetUpPart::Couplings:
        return SetUpWords::couplingsPart();
    case SetUpPart::Surfaces:
        return SurfaceWords::part();
    case SetUpPart::Gauges:
        return SetUpWords::gaugesPart();
    case SetUpPart::People:
        return SetUpWords::peoplePart();
    case SetUpPart::Events:
        return SetUpWords::eventsPart();
    case SetUpPart::BaselineDay:
        return SetUpWords::baselinePart();
    case SetUpPart::Paper:
        return PaperWords::part();
    case SetUpPart::Demonstration:
        break;
    }
    return SetUpWords::demonstrationPart();
}

namespace {

bool onlyLeafSets(const SetUpView& view)
{
    return std::ranges::all_of(view.gauges, [](const GaugeRow& row) {
        return !row.gauge.inUse || row.gauge.set.kind() == GaugeKind::Leaves;
    });
}

// What is there, in numbers; empty when nothing is.
QString countIn(const SetUpView& view, SetUpPart part)
{
    switch (part) {
    case SetUpPart::Airframe:
        return view.airframe ? shown(view.airframe->registration) : QString{};
    case SetUpPart::Couplings:
        return view.couplingsInUse() > 0 ? SetUpWords::couplings(view.couplingsInUse()) : QString{};
    case SetUpPart::Surfaces:
        return view.surfacesInUse() > 0 ? SurfaceWords::count(view.surfacesInUse()) : QString{};
    case SetUpPart::Gauges:
        if (view.gaugesInUse() == 0)
            return {};
        return onlyLeafSets(view) ? SetUpWords::leafSets(view.gaugesInUse())
                                  : SetUpWords::gauges(view.gaugesInUse());
    case SetUpPart::People:
        return view.persons.empty() ? QString{} : SetUpWords::people(static_cast<int>(view.persons.size()));
    case SetUpPart::Events:
        return view.events.empty() ? QString{} : SetUpWords::events(static_cast<int>(view.events.size()));
    case SetUpPart::BaselineDay:
        return view.couplingsWithGap() > 0
                   ? SetUpWords::bands(view.couplingsWithBand(), view.couplingsWithGap())
                   : QString{};
    case SetUpPart::Paper:
        return PaperWords::partDetail();
    case SetUpPart::Demonstration:
        break;
    }
    return view.couplingsInUse() > 0
               ? SetUpWords::shown(view.couplingsShownPartSeated(), view.couplingsInUse())
               : QString{};
}

QString stateOf(const SetUpView& view, SetUpPart part)
{
    const QString count = countIn(view, part);
    if (part == SetUpPart::Paper)
        return count;
    if (view.isDone(part))
        return SetUpWords::done(count);
    return count.isEmpty() ? SetUpWords::notYet() : SetUpWords::notYetBut(count);
}

} // namespace

PartList::PartList(QWidget* parent) : QFrame{parent}
{
    setProperty("card", true);
    auto* outer = new QVBoxLayout{this};
    outer->setContentsMargins(10, 14, 10, 12);
    outer->setSpacing(6);
    QLabel* heading = labelOf(SetUpWords::heading(), "label");
    m_progress = labelOf({}, "section", "setUpProgress");
    m_bar = new QProgressBar;
    m_bar->setTextVisible(false);
    m_bar->setAccessibleName(SetUpWords::heading());
    m_rows = new RowList{"part", SetUpWords::heading()};
    auto* inside = new QWidget;
    auto* rows = new QVBoxLayout{inside};
    rows->setContentsMargins(0, 4, 0, 0);
    rows->addWidget(m_rows);
    rows->addWidget(softLabel(SetUpWords::partKeys()));
    rows->addStretch(1);
    auto* scroll = new FlowScroll{inside};
    m_who = new QWidget;
    auto* who = new QVBoxLayout{m_who};
    who->setContentsMargins(6, 4, 6, 0);
    who->setSpacing(4);
    QLabel* label = labelOf(SetUpWords::statedBy(), "label");
    m_statedBy = new ChoiceBox{SetUpWords::statedBy()};
    m_statedBy->setObjectName("statedBy");
    m_statedBy->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    label->setBuddy(m_statedBy);
    who->addWidget(label);
    who->addWidget(m_statedBy);
    who->addWidget(softLabel(SetUpWords::statedByHint()));
    for (QWidget* one : std::initializer_list<QWidget*>{heading, m_progress, m_bar})
        outer->addWidget(one);
    outer->addWidget(scroll, 1);
    outer->addWidget(m_who);
    connect(m_rows, &RowList::rowChosen, this,
            [this](int at) { emit partChosen(kSetUpParts[static_cast<std::size_t>(at)]); });
    connect(m_rows, &RowList::rowOpened, this,
            [this](int at) { emit partOpened(kSetUpParts[static_cast<std::size_t>(at)]); });
    connect(m_statedBy, &QComboBox::activated, this, &PartList::statedByChosen);
}

void PartList::setLook(const Look& look)
{
    setFixedWidth(static_cast<int>(std::lround(300 * std::min(look.fonts.scale, 1.25))));
    m_rows->setLook(look);
}

void PartList::display(const SetUpView& view, SetUpPart current, const std::set<SetUpPart>& unsaved)
{
    const auto next = view.nextToDo();
    m_progress->setText(next ? SetUpWords::progress(view.stepsDone(), kGuidedSteps) : SetUpWords::allDone());
    m_bar->setRange(0, kGuidedSteps);
    m_bar->setValue(view.stepsDone());
    std::vector<RowText> rows;
    for (const SetUpPart part : kSetUpParts) {
        RowText text;
        text.title = titleOf(part);
        text.detail = stateOf(view, part);
        if (unsaved.contains(part))
            text.detail = SetUpWords::typedNotSaved(text.detail);
        if (view.isDone(part)) {
            text.shape = MarkShape::DiscTick;
            text.role = Role::Accent;
        } else if (next == part) {
            text.shape = MarkShape::Current;
            text.role = Role::Accent;
        }
        rows.push_back(text);
    }
    m_rows->display(rows);
    m_rows->choose(static_cast<int>(current));
    showPeople(view);
}

void PartList::showPeople(const SetUpView& view)
{
    fillPeople(m_statedBy, SetUpWords::nobodyNamed(), view.persons, statedBy());
    m_who->setVisible(!view.persons.empty());
}

std::optional<PersonId> PartList::statedBy() const
{
    return m_statedBy->chosen<PersonId>();
}

} // namespace rig
