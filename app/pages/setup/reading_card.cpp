#include "app/pages/setup/reading_card.h"

#include "app/pages/setup/panel_parts.h"
#include "app/pages/setup/setup_entries.h"
#include "app/widgets/announcer.h"
#include "app/widgets/choice_box.h"
#include "app/widgets/leaf_row.h"
#include "app/widgets/parts.h"
#include "app/wording/baseline_words.h"
#include "app/wording/formats.h"
#include "app/wording/problem_words.h"

#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace rig {

ReadingCard::ReadingCard(const char* prefix, BenchTools tools)
    : m_prefix{QLatin1String(prefix)}, m_tools{tools}
{
    setProperty("card", true);
    m_body = new QVBoxLayout{this};
    m_body->setContentsMargins(16, 14, 16, 14);
    m_body->setSpacing(10);
    m_title = labelOf({}, "section");
    m_title->setObjectName(named("Coupling"));
    m_body->addWidget(m_title);
}

ChoiceBox* ReadingCard::addGauges(ChoiceGrid* choices)
{
    m_gauge = choices->add(BaselineWords::measuredWith(), named("Gauge"));
    return m_gauge;
}

void ReadingCard::addReading()
{
    const auto label = [this](const char* kind, const char* part) {
        QLabel* made = labelOf({}, kind);
        made->setObjectName(named(part));
        m_body->addWidget(made);
        return made;
    };
    m_notice = label("caution", "Notice");
    m_drop = buttonOf(BaselineWords::dropCorrection(), "dropCorrection");
    m_body->addWidget(m_drop, 0, Qt::AlignLeft);
    m_leaves = new LeafRow;
    m_leaves->setObjectName(named("Leaves"));
    m_body->addWidget(m_leaves);
    m_refused = label("problem", "Refused");
    m_kept = label("label", "Kept");
    m_strip = new GapStripWidget;
    m_strip->setObjectName(named("Strip"));
    m_body->addWidget(m_strip);
    m_numbers = label("body", "Numbers");
    connect(m_drop, &QPushButton::clicked, this, [this] {
        m_work.correction.reset();
        showAll();
    });
    connect(m_leaves, &LeafRow::readingChosen, this, &ReadingCard::take);
    connect(m_leaves, &LeafRow::entryRefused, this, [this](const QString& sentence) {
        sayIn(m_refused, m_leaves->says(sentence) ? QString{} : sentence);
    });
}

void ReadingCard::setLook(const Look& look)
{
    m_leaves->setLook(look);
    m_strip->setLook(look);
    m_strip->setFixedHeight(static_cast<int>(std::lround(92 * look.fonts.scale)));
}

void ReadingCard::display(const BaselineDayView& view)
{
    m_view = view;
    if (!wrong())
        m_work.correction.reset(); // it is not on the screen
    showAll();
}

void ReadingCard::showAll()
{
    m_title->setText(shown(sheet()->coupling.name));
    m_gauge->begin(BaselineWords::chooseGauge());
    for (const BaselineGaugeRow& row : m_view.gauges) {
        const QString name = shown(row.gauge.name);
        m_gauge->add(row.inDoubt ? BaselineWords::gaugeInDoubt(name) : name, row.gauge.id);
    }
    m_gauge->choose(m_work.gauge);
    showTop();
    sayIn(m_notice, step());
    m_drop->setVisible(wrong());
    showLeaves();
    sayIn(m_refused, {});
    sayAloud(m_kept, m_work.kept);
    m_strip->setView(strip());
    m_numbers->setText(numbers().join(QLatin1Char('\n')));
}

const BaselineReadingRow* ReadingCard::wrong() const
{
    if (!m_work.correction || !sheet())
        return nullptr;
    const auto& rows = sheet()->readings;
    const auto found = std::ranges::find_if(
        rows, [this](const BaselineReadingRow& row) { return row.reading.id == m_work.correction->of; });
    return found == rows.end() ? nullptr : &*found;
}

const BaselineGaugeRow* ReadingCard::gauge() const
{
    const BaselineReadingRow* row = wrong();
    const auto id = row && row->reading.gauge ? row->reading.gauge : m_work.gauge;
    const auto found = std::ranges::find_if(
        m_view.gauges, [&id](const BaselineGaugeRow& one) { return one.gauge.id == id; });
    return found == m_view.gauges.end() ? nullptr : &*found;
}

QString ReadingCard::correctingNow() const
{
    const Formats formats;
    const QString now =
        BaselineWords::correctNow(formats.interval(wrong()->reading.interval),
                                  formats.whenRead(wrong()->reading), shown(wrong()->person));
    return m_work.person ? now + QLatin1Char(' ') +
                               BaselineWords::inWhoseName(shown(wrong()->person), nameOf(*m_work.person))
                         : now;
}

QString ReadingCard::correctQuestion(const QString& interval, const QString& time) const
{
    return BaselineWords::correctQuestion(interval, time);
}

QString ReadingCard::nameOf(PersonId id) const
{
    const auto found = std::ranges::find(m_view.persons, id, &Person::id);
    return found == m_view.persons.end() ? QString{} : shown(found->name);
}

void ReadingCard::showLeaves()
{
    const BaselineReadingRow* row = wrong();
    m_leaves->setGauge(gauge() ? gauge()->gauge.set : GaugeSet{}, centre());
    m_leaves->setChosen(row ? std::optional{GaugeReading{row->reading.interval, row->reading.technique}}
                            : std::nullopt);
    m_leaves->setEnabled(mayTake());
}

void ReadingCard::take(const GaugeReading& reading)
{
    if (!sheet() || !mayTake())
        return;
    const bool isCorrection = m_work.correction.has_value();
    const Result<ReadingId> kept = keep(reading);
    const Formats formats;
    m_work.kept = kept ? keptSentence(formats.interval(reading.interval), formats.time(m_tools.clock.now()),
                                      isCorrection)
                       : BaselineWords::notKept();
    if (kept)
        m_work.correction.reset();
    report(kept ? Outcome{Done{}} : Outcome{kept.problem()});
}

void ReadingCard::report(const Outcome& outcome)
{
    if (!outcome)
        emit problemArose(ProblemWords::sentence(outcome.problem(), {}));
    emit refreshAsked();
    if (outcome)
        emit changed();
}

void ReadingCard::beginCorrection(const Correction& correction)
{
    m_work.correction = correction;
    m_work.kept.clear();
    showAll();
}

void ReadingCard::forgetEverything()
{
    m_work = {};
    leave();
}

void ReadingCard::leaveCoupling()
{
    m_work.correction.reset();
    m_work.kept.clear();
    dropTyped();
}

// A figure typed at one coupling, or by one person, is not kept for another.
void ReadingCard::dropTyped()
{
    m_leaves->clearTyped();
}

bool ReadingCard::hasTyped() const
{
    return m_leaves->isFigureBegun();
}

bool ReadingCard::takeKey(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape && m_leaves->clearFigure())
        return sayIn(m_refused, {}), true;
    if (event->key() == Qt::Key_Escape && !m_drop->isHidden())
        return m_drop->click(), true;
    return m_leaves->takeKey(event);
}

} // namespace rig
