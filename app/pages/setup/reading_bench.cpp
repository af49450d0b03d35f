#include "app/pages/setup/reading_bench.h"

#include "app/pages/prompts.h"
#include "app/pages/setup/baseline_couplings.h"
#include "app/pages/setup/baseline_readings.h"
#include "app/pages/setup/setup_entries.h"
#include "app/widgets/flow_scroll.h"
#include "app/widgets/parts.h"
#include "app/wording/baseline_words.h"
#include "app/wording/formats.h"
#include "app/wording/problem_words.h"
#include "app/wording/prompt_words.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QScrollBar>
#include <QTableWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace rig {

ReadingBench::ReadingBench(const BenchTools& tools, ReadingCard* card, BaselineReadings* readings,
                           QWidget* parent)
    : QWidget{parent}, m_tools{tools}, m_card{card}, m_readings{readings}
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
    m_withoutGap = labelOf({}, "soft");
    m_withoutGap->setObjectName(m_card->named("WithoutGap"));
    m_withoutGap->setMaximumWidth(m_couplings->sizeHint().width());
    left->addWidget(m_withoutGap);
    row->addLayout(left);
    m_scroll = new FlowScroll{buildSheet()};
    m_scroll->setFocusPolicy(Qt::NoFocus);
    row->addWidget(m_scroll, 1);
    connectParts();
}

QWidget* ReadingBench::buildSheet()
{
    auto* sheet = new QWidget;
    auto* layout = new QVBoxLayout{sheet};
    layout->setContentsMargins(0, 0, 4, 0);
    layout->setSpacing(12);
    layout->addWidget(labelOf(m_card->title(), "title"));
    layout->addWidget(labelOf(m_card->whatFor(), "soft"));
    m_lack = labelOf({}, "caution");
    m_lack->setObjectName(m_card->named("Lack"));
    layout->addWidget(m_lack);
    layout->addWidget(m_card);
    layout->addWidget(m_readings);
    if (QWidget* below = m_card->below())
        layout->addWidget(below);
    layout->addStretch(1);
    return sheet;
}

void ReadingBench::connectParts()
{
    connect(m_couplings, &BaselineCouplings::couplingChosen, this, &ReadingBench::chooseCoupling);
    connect(m_card, &ReadingCard::refreshAsked, this, &ReadingBench::refresh);
    connect(m_card, &ReadingCard::problemArose, this, &ReadingBench::problemArose);
    connect(m_card, &ReadingCard::changed, this, &ReadingBench::changed);
    connect(m_readings, &BaselineReadings::correctionAsked, this, &ReadingBench::correct);
    connect(m_readings, &BaselineReadings::exclusionAsked, this, &ReadingBench::exclude);
    connect(m_readings, &BaselineReadings::lackSaid, this, [this](QWidget* lack, QWidget* next) {
        m_scroll->bringIntoView(lack); // a key may ask from far above
        m_scroll->bringIntoView(next);
    });
    // Lists and drop-downs would search for the letters and figures that answer here.
    m_couplings->installEventFilter(this);
    m_readings->table()->installEventFilter(this);
    for (QComboBox* box : findChildren<QComboBox*>())
        box->installEventFilter(this);
}

void ReadingBench::showAirframe(std::optional<AirframeId> airframe)
{
    if (m_airframe != airframe) {
        m_airframe = airframe;
        m_coupling.reset();
        m_card->forgetEverything();
    }
    refresh();
    // Keys work at once where the card knows what comes next; what was chosen stays.
    const auto first = m_card->begin(m_view);
    if (!m_coupling && first)
        chooseCoupling(*first);
    else
        showSheet();
}

void ReadingBench::say(const Problem& problem)
{
    emit problemArose(ProblemWords::sentence(problem, {}));
}

void ReadingBench::refresh()
{
    m_view = {};
    m_card->close();
    if (m_airframe) {
        auto view = m_tools.presenter.view(*m_airframe);
        if (!view)
            say(view.problem());
        else
            m_view = std::move(view).value();
    }
    if (std::ranges::find(m_view.couplings, m_coupling, &BaselineCouplingRow::id) == m_view.couplings.end())
        m_coupling.reset();
    if (m_coupling)
        if (const Outcome read = m_card->read(*m_airframe, *m_coupling); !read)
            say(read.problem());
    showCouplings();
    showSheet();
}

void ReadingBench::showCouplings()
{
    std::vector<BaselineCouplings::Row> rows;
    for (const BaselineCouplingRow& row : m_view.couplings)
        rows.push_back({row.id, shown(row.name), m_card->detailOf(row)});
    m_couplings->display(rows, m_coupling);
    QStringList names;
    for (const std::string& name : m_view.withoutGap)
        names << shown(name);
    sayIn(m_withoutGap, names.isEmpty() ? QString{} : BaselineWords::withoutGap(names));
}

QString ReadingBench::lackOf() const
{
    if (!m_airframe)
        return BaselineWords::noAirframe();
    if (m_view.couplings.empty())
        return m_view.withoutGap.empty() ? BaselineWords::noCouplings() : BaselineWords::noneWithGap();
    if (m_view.gauges.empty())
        return BaselineWords::noGauges();
    if (const QString lack = m_card->lackOfPeople(m_view.persons); !lack.isEmpty())
        return lack;
    return m_card->sheet() ? QString{} : BaselineWords::chooseCoupling();
}

void ReadingBench::showSheet()
{
    const QString lack = lackOf();
    sayIn(m_lack, lack);
    const bool open = lack.isEmpty();
    m_card->setVisible(open);
    m_readings->setVisible(open && !m_card->sheet()->readings.empty());
    if (QWidget* below = m_card->below())
        below->setVisible(open);
    if (!open)
        return;
    m_card->display(m_view);
    m_readings->display(m_card->sheet()->readings, m_view.persons, m_card->isFrozen(),
                        m_tools.clock.now().localDay());
}

void ReadingBench::chooseCoupling(CouplingId coupling)
{
    m_coupling = coupling;
    m_card->leaveCoupling();
    refresh();
}

void ReadingBench::correct(const BaselineReadingRow& row)
{
    if (!m_card->person())
        return m_readings->say(BaselineWords::chooseCorrector());
    const auto asked = m_coupling;
    const Formats formats;
    m_tools.prompts.askText(
        this, BaselineWords::correctTitle(),
        m_card->correctQuestion(formats.interval(row.reading.interval), formats.whenRead(row.reading)),
        PromptWords::spoiledBy(), [this, asked, wrong = row.reading.id](const QString& reason) {
            if (m_coupling != asked)
                return;
            m_card->beginCorrection({wrong, reason.toStdString()});
            m_scroll->verticalScrollBar()->setValue(0); // where the figure is given
        });
}

void ReadingBench::exclude(const BaselineReadingRow& row, PersonId by)
{
    const Formats formats;
    m_tools.prompts.askText(
        this, BaselineWords::excludeTitle(),
        BaselineWords::excludeQuestion(formats.interval(row.reading.interval),
                                       formats.whenRead(row.reading)),
        PromptWords::noReadingHere(),
        [this, unwanted = row.reading.id, by](const QString& reason) { excludeFor(unwanted, by, reason); });
}

void ReadingBench::excludeFor(ReadingId reading, PersonId by, const QString& reason)
{
    const Outcome excluded = m_tools.presenter.exclude(reading, by, reason.toStdString());
    if (!excluded)
        say(excluded.problem());
    refresh();
    if (excluded)
        emit changed();
}

bool ReadingBench::takeKey(QKeyEvent* event)
{
    if (!m_card->sheet() || m_card->isHidden())
        return false;
    return m_card->takeKey(event) || m_readings->takeKey(event);
}

bool ReadingBench::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::KeyPress && takeKey(static_cast<QKeyEvent*>(event)))
        return true;
    return QWidget::eventFilter(watched, event);
}

void ReadingBench::keyPressEvent(QKeyEvent* event)
{
    if (!takeKey(event))
        QWidget::keyPressEvent(event);
}

void ReadingBench::hideEvent(QHideEvent* event)
{
    m_card->leave();
    showSheet();
    QWidget::hideEvent(event);
}

} // namespace rig
