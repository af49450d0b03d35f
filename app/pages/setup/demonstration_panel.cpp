#include "app/pages/setup/demonstration_panel.h"

#include "app/pages/prompts.h"
#include "app/pages/setup/baseline_couplings.h"
#include "app/pages/setup/baseline_readings.h"
#include "app/widgets/flow_scroll.h"
#include "app/widgets/parts.h"
#include "app/wording/baseline_words.h"
#include "app/wording/demonstration_words.h"
#include "app/wording/formats.h"
#include "app/wording/problem_words.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QScrollBar>
#include <QTableWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace rig {

DemonstrationPanel::DemonstrationPanel(Records& records, const Clock& clock, Prompts& prompts,
                                       QWidget* parent)
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

QWidget* DemonstrationPanel::buildSheet()
{
    auto* sheet = new QWidget;
    auto* layout = new QVBoxLayout{sheet};
    layout->setContentsMargins(0, 0, 4, 0);
    layout->setSpacing(12);
    layout->addWidget(labelOf(DemonstrationWords::title(), "title"));
    layout->addWidget(labelOf(DemonstrationWords::whatFor(), "soft"));
    m_lack = labelOf({}, "caution", "demonstrationLack");
    layout->addWidget(m_lack);
    m_card = new DemonstrationCard;
    m_readings = new BaselineReadings{BaselineReadings::Kind::Demonstration};
    layout->addWidget(m_card);
    layout->addWidget(m_readings);
    layout->addStretch(1);
    return sheet;
}

void DemonstrationPanel::connectParts()
{
    connect(m_couplings, &BaselineCouplings::couplingChosen, this, [this](CouplingId coupling) {
        m_coupling = coupling;
        m_work.correction.reset();
        m_work.kept.clear();
        m_card->dropTyped();
        refresh();
    });
    connect(m_card, &DemonstrationCard::cautionTicked, this, [this](int caution, bool ticked) {
        m_work.cautions[static_cast<std::size_t>(caution)] = ticked;
        showSheet();
    });
    connect(m_card, &DemonstrationCard::ownerChosen, this, [this](std::optional<PersonId> owner) {
        m_work.owner = owner;
        m_card->dropTyped();
        if (m_work.second == owner)
            m_work.second.reset();
        showSheet();
    });
    connect(m_card, &DemonstrationCard::secondChosen, this, [this](std::optional<PersonId> second) {
        m_work.second = second;
        showSheet();
    });
    connect(m_card, &DemonstrationCard::gaugeChosen, this, [this](std::optional<GaugeId> gauge) {
        m_work.gauge = gauge;
        refresh();
    });
    connect(m_card, &DemonstrationCard::readingChosen, this, &DemonstrationPanel::keepReading);
    connect(m_card, &DemonstrationCard::correctionDropped, this, [this] {
        m_work.correction.reset();
        showSheet();
    });
    connect(m_readings, &BaselineReadings::correctionAsked, this, &DemonstrationPanel::beginCorrection);
    // Lists and drop-downs would search for the figures that are typed here.
    m_couplings->installEventFilter(this);
    m_readings->table()->installEventFilter(this);
    for (QComboBox* box : findChildren<QComboBox*>())
        box->installEventFilter(this);
}

void DemonstrationPanel::setLook(const Look& look)
{
    m_card->setLook(look);
}

void DemonstrationPanel::showAirframe(std::optional<AirframeId> airframe)
{
    if (m_airframe != airframe) {
        m_airframe = airframe;
        m_coupling.reset();
        m_work = {};
    }
    refresh();
}

void DemonstrationPanel::refresh()
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
        auto sheet = m_presenter.demonstration(*m_airframe, *m_coupling, m_work.gauge);
        if (!sheet)
            emit problemArose(ProblemWords::sentence(sheet.problem(), {}));
        else
            m_sheet = std::move(sheet).value();
    }
    showCouplings();
    showSheet();
}

void DemonstrationPanel::showCouplings()
{
    std::vector<BaselineCouplings::Row> rows;
    for (const BaselineCouplingRow& row : m_view.couplings)
        rows.push_back({row.id, QString::fromStdString(row.name),
                        row.partSeated > 0 ? DemonstrationWords::shown(row.partSeated)
                                           : DemonstrationWords::neverShown()});
    m_couplings->display(rows, m_coupling);
}

QString DemonstrationPanel::lackOf() const
{
    if (!m_airframe)
        return BaselineWords::noAirframe();
    if (m_view.couplings.empty())
        return BaselineWords::noCouplings();
    if (m_view.gauges.empty())
        return BaselineWords::noGauges();
    if (m_view.persons.size() < 2)
        return DemonstrationWords::noTwoPeople();
    return m_sheet ? QString{} : BaselineWords::chooseCoupling();
}

void DemonstrationPanel::showSheet()
{
    const QString lack = lackOf();
    sayIn(m_lack, lack);
    const bool open = lack.isEmpty();
    m_card->setVisible(open);
    m_readings->setVisible(open && !m_sheet->readings.empty());
    if (!open)
        return;
    m_card->display(m_view, *m_sheet, m_work);
    m_readings->display(m_sheet->readings, m_view.persons, false, m_clock.now().localDay());
}

void DemonstrationPanel::keepReading(const GaugeReading& reading)
{
    const bool two = m_work.owner && m_work.second && m_work.owner != m_work.second;
    if (!m_sheet || !m_sheet->fitting || !m_work.allCautions() || !two || !m_work.gauge)
        return;
    const auto second = std::ranges::find(m_view.persons, *m_work.second, &Person::id);
    const QString name = second == m_view.persons.end() ? QString{} : QString::fromStdString(second->name);
    const std::string note =
        (m_work.correction
             ? DemonstrationWords::correctionNote(QString::fromStdString(m_work.correction->reason), name)
             : DemonstrationWords::secondNote(name))
            .toStdString();
    const auto corrects = m_work.correction ? std::optional{m_work.correction->of} : std::nullopt;
    const auto kept = m_presenter.keep(*m_sheet, *m_work.owner, *m_work.gauge, reading, note, corrects);
    const Formats formats;
    if (!kept) {
        m_work.kept = BaselineWords::notKept();
        emit problemArose(ProblemWords::sentence(kept.problem(), {}));
        return refresh();
    }
    m_work.kept = DemonstrationWords::kept(formats.interval(reading.interval), formats.time(m_clock.now()));
    m_work.correction.reset();
    refresh();
    emit changed();
}

void DemonstrationPanel::beginCorrection(const BaselineReadingRow& row)
{
    if (!m_work.owner)
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

bool DemonstrationPanel::takeKey(QKeyEvent* event)
{
    if (!m_sheet || m_card->isHidden())
        return false;
    if (m_card->takeKey(event))
        return true;
    if (isKey(*event, BaselineWords::keyCorrect()))
        return m_readings->askCorrection(), true;
    return false;
}

bool DemonstrationPanel::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::KeyPress && takeKey(static_cast<QKeyEvent*>(event)))
        return true;
    return QWidget::eventFilter(watched, event);
}

void DemonstrationPanel::keyPressEvent(QKeyEvent* event)
{
    if (!takeKey(event))
        QWidget::keyPressEvent(event);
}

void DemonstrationPanel::hideEvent(QHideEvent* event)
{
    // The cautions hold for one sitting.
    m_work.cautions = {};
    m_work.correction.reset();
    m_work.kept.clear();
    showSheet();
    QWidget::hideEvent(event);
}

} // namespace rig
