#include "app/pages/setup/baseline_panel.h"

#include "app/pages/prompts.h"
#include "app/pages/setup/baseline_couplings.h"
#include "app/pages/setup/baseline_cycle_card.h"
#include "app/pages/setup/baseline_freeze.h"
#include "app/pages/setup/baseline_readings.h"
#include "app/widgets/flow_scroll.h"
#include "app/widgets/parts.h"
#include "app/wording/baseline_words.h"
#include "app/wording/formats.h"
#include "app/wording/problem_words.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QScrollBar>
#include <QTableWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace rig {

namespace {

QString detailOf(const BaselineCouplingRow& row)
{
    switch (row.stage) {
    case BaselineStage::NoFitting:
        return BaselineWords::noFittingShort();
    case BaselineStage::Thin:
        return BaselineWords::confirmedThin(row.admitted);
    case BaselineStage::Frozen:
        return BaselineWords::confirmedFrozen(row.admitted);
    case BaselineStage::NoBand:
    case BaselineStage::Enough:
        break;
    }
    return BaselineWords::confirmed(row.admitted);
}

} // namespace

BaselinePanel::BaselinePanel(Records& records, const Clock& clock, Prompts& prompts, QWidget* parent)
    : QWidget{parent}, m_presenter{records, clock}, m_clock{clock}, m_prompts{prompts}
{
    auto* row = new QHBoxLayout{this};
    row->setContentsMargins(20, 16, 12, 14);
    row->setSpacing(16);
    auto* left = new QVBoxLayout;
    left->setSpacing(4);
    QLabel* heading = labelOf(BaselineWords::couplings(), "label");
    m_couplings = new BaselineCouplings;
    heading->setBuddy(m_couplings);
    left->addWidget(heading);
    left->addWidget(m_couplings, 1);
    row->addLayout(left);
    m_scroll = new FlowScroll{buildSheet()};
    m_scroll->setFocusPolicy(Qt::NoFocus);
    row->addWidget(m_scroll, 1);
    connectParts();
}

QWidget* BaselinePanel::buildSheet()
{
    auto* sheet = new QWidget;
    auto* layout = new QVBoxLayout{sheet};
    layout->setContentsMargins(0, 0, 4, 0);
    layout->setSpacing(12);
    layout->addWidget(labelOf(BaselineWords::title(), "title"));
    layout->addWidget(labelOf(BaselineWords::whatFor(), "soft"));
    m_lack = labelOf({}, "caution", "baselineLack");
    layout->addWidget(m_lack);
    m_cycle = new BaselineCycleCard;
    m_readings = new BaselineReadings{BaselineReadings::Kind::Baseline};
    m_freeze = new BaselineFreeze;
    layout->addWidget(m_cycle);
    layout->addWidget(m_readings);
    layout->addWidget(m_freeze);
    layout->addStretch(1);
    return sheet;
}

void BaselinePanel::connectParts()
{
    connect(m_couplings, &BaselineCouplings::couplingChosen, this, &BaselinePanel::chooseCoupling);
    connect(m_cycle, &BaselineCycleCard::personChosen, this, &BaselinePanel::choosePerson);
    connect(m_cycle, &BaselineCycleCard::gaugeChosen, this, [this](std::optional<GaugeId> gauge) {
        m_work.gauge = gauge;
        showSheet();
    });
    connect(m_cycle, &BaselineCycleCard::reconnectedAnswered, this, [this](bool yes) {
        m_work.cycle.answerReconnected(yes);
        m_work.kept.clear();
        m_work.personChanged = false;
        showSheet();
    });
    connect(m_cycle, &BaselineCycleCard::lockedAnswered, this, [this](bool yes) {
        m_work.cycle.answerLocked(yes);
        showSheet();
    });
    connect(m_cycle, &BaselineCycleCard::readingChosen, this, [this](const GaugeReading& reading) {
        m_work.correction ? keepCorrection(reading) : keepReading(reading);
    });
    connect(m_cycle, &BaselineCycleCard::correctionDropped, this, [this] {
        m_work.correction.reset();
        showSheet();
    });
    connect(m_readings, &BaselineReadings::correctionAsked, this, &BaselinePanel::beginCorrection);
    connect(m_readings, &BaselineReadings::exclusionAsked, this, &BaselinePanel::exclude);
    connect(m_freeze, &BaselineFreeze::freezeAsked, this, &BaselinePanel::freeze);
    // Lists and drop-downs would search for the letters that answer here.
    m_couplings->installEventFilter(this);
    m_readings->table()->installEventFilter(this);
    for (QComboBox* box : findChildren<QComboBox*>())
        box->installEventFilter(this);
}

void BaselinePanel::setLook(const Look& look)
{
    m_cycle->setLook(look);
}

void BaselinePanel::showAirframe(std::optional<AirframeId> airframe)
{
    if (m_airframe != airframe) {
        m_airframe = airframe;
        m_coupling.reset();
        m_work = {};
    }
    refresh();
    openAtTheUsual();
}

// Keys work at once: the coupling that is next, who measured last and with what. What was chosen stays.
void BaselinePanel::openAtTheUsual()
{
    if (!m_work.person)
        m_work.person = m_view.usualPerson;
    if (!m_work.gauge)
        m_work.gauge = m_view.usualGauge;
    if (!m_coupling && m_view.firstCoupling)
        chooseCoupling(*m_view.firstCoupling);
    else
        showSheet();
}

void BaselinePanel::refresh()
{
    m_view = {};
    m_sheet.reset();
    if (m_airframe) {
        auto view = m_presenter.view(*m_airframe);
        if (!view)
            emit problemArose(ProblemWords::sentence(view.problem(), {}));
        else
            m_view = std::move(view).value();
    }
    if (std::ranges::find(m_view.couplings, m_coupling, &BaselineCouplingRow::id) == m_view.couplings.end())
        m_coupling.reset();
    if (m_coupling) {
        auto sheet = m_presenter.sheet(*m_airframe, *m_coupling);
        if (!sheet)
            emit problemArose(ProblemWords::sentence(sheet.problem(), {}));
        else
            m_sheet = std::move(sheet).value();
    }
    showCouplings();
    showSheet();
}

void BaselinePanel::showCouplings()
{
    std::vector<BaselineCouplings::Row> rows;
    for (const BaselineCouplingRow& row : m_view.couplings)
        rows.push_back({row.id, QString::fromStdString(row.name), detailOf(row)});
    m_couplings->display(rows, m_coupling);
}

QString BaselinePanel::lackOf() const
{
    if (!m_airframe)
        return BaselineWords::noAirframe();
    if (m_view.couplings.empty())
        return BaselineWords::noCouplings();
    if (m_view.gauges.empty())
        return BaselineWords::noGauges();
    if (m_view.persons.empty())
        return BaselineWords::noPeople();
    return m_sheet ? QString{} : BaselineWords::chooseCoupling();
}

void BaselinePanel::showSheet()
{
    const QString lack = lackOf();
    sayIn(m_lack, lack);
    const bool open = lack.isEmpty();
    m_cycle->setVisible(open);
    m_readings->setVisible(open && !m_sheet->readings.empty());
    m_freeze->setVisible(open);
    if (!open)
        return;
    m_cycle->display(m_view, *m_sheet, m_work);
    m_readings->display(m_sheet->readings, m_view.persons, m_sheet->frozen.has_value(),
                        m_clock.now().localDay());
    m_freeze->display(*m_sheet, m_view.persons);
}

void BaselinePanel::chooseCoupling(CouplingId coupling)
{
    m_coupling = coupling;
    m_work.cycle = {};
    m_work.correction.reset();
    m_work.kept.clear();
    refresh();
}

void BaselinePanel::choosePerson(std::optional<PersonId> person)
{
    // Whoever reads has confirmed it too: another person starts the cycle anew.
    m_work.personChanged = m_work.person && m_work.person != person && m_work.cycle.reconnected.has_value();
    if (m_work.person != person)
        m_work.cycle = {};
    m_work.person = person;
    showSheet();
}

void BaselinePanel::keepReading(const GaugeReading& reading)
{
    if (!m_sheet || !m_work.cycle.mayRead() || !m_work.person || !m_work.gauge)
        return;
    const auto kept = m_presenter.keep(*m_sheet, *m_work.person, *m_work.gauge, reading, std::nullopt);
    const Formats formats;
    m_work.kept = kept ? BaselineWords::kept(formats.interval(reading.interval), formats.time(m_clock.now()))
                       : BaselineWords::notKept();
    if (kept)
        m_work.cycle = {};
    report(kept ? Outcome{Done{}} : Outcome{kept.problem()});
}

void BaselinePanel::keepCorrection(const GaugeReading& reading)
{
    const auto wrong = std::ranges::find_if(m_sheet->readings, [this](const BaselineReadingRow& row) {
        return row.reading.id == m_work.correction->of;
    });
    if (wrong == m_sheet->readings.end() || !m_work.person)
        return;
    const auto gauge = wrong->reading.gauge ? wrong->reading.gauge : m_work.gauge;
    if (!gauge)
        return;
    const auto kept = m_presenter.keep(*m_sheet, *m_work.person, *gauge, reading, m_work.correction);
    const Formats formats;
    m_work.kept =
        kept ? BaselineWords::corrected(formats.interval(reading.interval), formats.time(m_clock.now()))
             : BaselineWords::notKept();
    if (kept)
        m_work.correction.reset();
    report(kept ? Outcome{Done{}} : Outcome{kept.problem()});
}

void BaselinePanel::beginCorrection(const BaselineReadingRow& row)
{
    if (!m_work.person)
        return m_readings->say(BaselineWords::chooseCorrector());
    const Formats formats;
    const auto reason =
        m_prompts.askText(this, BaselineWords::correctTitle(),
                          BaselineWords::correctQuestion(formats.interval(row.reading.interval),
                                                         formats.moment(row.reading.when)));
    if (!reason)
        return;
    m_work.correction = Correction{row.reading.id, reason->toStdString()};
    m_work.kept.clear();
    showSheet();
    m_scroll->verticalScrollBar()->setValue(0); // where the figure is given
}

void BaselinePanel::exclude(const BaselineReadingRow& row, PersonId by)
{
    const Formats formats;
    const auto reason =
        m_prompts.askText(this, BaselineWords::excludeTitle(),
                          BaselineWords::excludeQuestion(formats.interval(row.reading.interval),
                                                         formats.moment(row.reading.when)));
    if (reason)
        report(m_presenter.exclude(row.reading.id, by, reason->toStdString()));
}

void BaselinePanel::freeze(PersonId first, PersonId second)
{
    const auto nameOf = [this](PersonId id) {
        const auto found = std::ranges::find(m_view.persons, id, &Person::id);
        return found == m_view.persons.end() ? QString{} : QString::fromStdString(found->name);
    };
    const BaselineSheet asked = *m_sheet; // what is on the screen now, whatever comes in while it is asked
    const QString question = BaselineWords::freezeQuestion(QString::fromStdString(asked.coupling.name),
                                                           asked.admitted, nameOf(first), nameOf(second));
    if (m_prompts.confirm(this, BaselineWords::freezeTitle(), question, BaselineWords::freezeYes()))
        report(m_presenter.freeze(asked, first, second));
}

void BaselinePanel::report(const Outcome& outcome)
{
    if (!outcome)
        emit problemArose(ProblemWords::sentence(outcome.problem(), {}));
    refresh();
    if (outcome)
        emit changed();
}

bool BaselinePanel::takeKey(QKeyEvent* event)
{
    if (!m_sheet || m_cycle->isHidden())
        return false;
    if (m_cycle->takeKey(event))
        return true;
    if (isKey(*event, BaselineWords::keyCorrect()))
        return m_readings->askCorrection(), true;
    if (isKey(*event, BaselineWords::keyExclude()))
        return m_readings->askExclusion(), true;
    if (isKey(*event, BaselineWords::keyFreeze()))
        return m_freeze->ask(), true;
    return false;
}

bool BaselinePanel::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::KeyPress && takeKey(static_cast<QKeyEvent*>(event)))
        return true;
    return QWidget::eventFilter(watched, event);
}

void BaselinePanel::keyPressEvent(QKeyEvent* event)
{
    if (!takeKey(event))
        QWidget::keyPressEvent(event);
}

void BaselinePanel::hideEvent(QHideEvent* event)
{
    // Whoever went away starts the cycle anew: nothing confirmed is carried over.
    m_work.cycle = {};
    m_work.correction.reset();
    m_work.kept.clear();
    showSheet();
    QWidget::hideEvent(event);
}

} // namespace rig
