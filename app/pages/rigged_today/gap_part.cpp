#include "app/pages/rigged_today/gap_part.h"

#include "app/widgets/announcer.h"
#include "app/widgets/gap_strip_widget.h"
#include "app/widgets/leaf_row.h"
#include "app/widgets/parts.h"
#include "app/widgets/verdict_card.h"
#include "app/wording/formats.h"
#include "app/wording/rigged_words.h"
#include "app/wording/verdict_words.h"
#include "core/airframe/name_in.h"
#include "core/rigging/found_as.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace rig {

namespace {

constexpr double kTallestStrip = 220; // pixels

QString gaugeNoteOf(const CouplingSheet& sheet)
{
    if (!sheet.gauge)
        return {};
    const QString name = QString::fromStdString(sheet.gauge->name);
    if (!sheet.gaugeChecked)
        return RiggedWords::gaugeNeverChecked(name);
    const QString day = Formats{}.day(*sheet.gaugeChecked);
    return sheet.isGaugeOverdue ? RiggedWords::gaugeOverdue(name, day) : RiggedWords::gaugeChecked(name, day);
}

GapStripView stripOf(const CouplingSheet& sheet)
{
    GapStripView strip;
    strip.band = sheet.band;
    strip.partSeated = sheet.history.partSeated;
    if (sheet.turn == Turn::First)
        for (const TrendReading& one : sheet.lastTwelve.readings)
            if (one.verdict == Verdict::Inside || one.verdict == Verdict::NoBandYet)
                strip.earlier.push_back(one.interval);
    return strip;
}

// What another one has taken the place of is no past.
bool isCorrected(const SheetReading& one, const CouplingSheet& sheet)
{
    return std::ranges::any_of(sheet.readings, [&one](const SheetReading& other) {
        return other.reading.corrects == one.reading.id;
    });
}

// The strip has a reading's colour only where the card has its mark.
std::optional<Verdict> verdictShown(const VerdictCard& card, const Judgement& judgement)
{
    return card.says() == saysOf(judgement.verdict) ? std::optional{judgement.verdict} : std::nullopt;
}

// They say nothing any more, and stay to be read.
void showStruck(QLabel* label, const std::vector<Person>& persons, const CouplingSheet& sheet)
{
    const Formats formats;
    QStringList plain;
    QStringList drawn;
    for (const StruckReading& one : sheet.flow.struck) {
        const QString who = QString::fromStdString(nameIn(persons, one.strike.stamp.by));
        const QString interval = formats.interval(one.reading.interval);
        const QString time = formats.time(one.strike.stamp.when);
        const QString reason = QString::fromStdString(one.strike.reason);
        plain << RiggedWords::struck(interval, time, who, reason);
        drawn << RiggedWords::struck(QStringLiteral("<s>%1</s>").arg(interval.toHtmlEscaped()), time,
                                     who.toHtmlEscaped(), reason.toHtmlEscaped());
    }
    sayIn(label, drawn.join(QStringLiteral("<br>")));
    label->setAccessibleName(plain.join(QLatin1Char('\n')));
}

// What a gap that is read here as found is kept as.
SeatState foundHere(const CouplingSheet& sheet)
{
    return sheet.stop && sheet.stop->saidNo ? foundAfterNo(*sheet.stop->saidNo) : SeatState::PartSeated;
}

Says saysOf(SeatState found)
{
    return found == SeatState::NotSecured ? Says::NotSecured : Says::PartSeated;
}

} // namespace

GapPart::GapPart(const CouplingSheet& sheet, QVBoxLayout* layout, QObject* parent)
    : QObject{parent}, m_sheet{sheet}
{
    m_noGap = labelOf(RiggedWords::noGapHere(), "soft", "noGapHere");
    layout->addWidget(m_noGap);
    m_strip = new GapStripWidget;
    m_strip->setObjectName("gapStrip");
    m_strip->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::MinimumExpanding);
    layout->addWidget(m_strip, 1); // takes what folds away, so that nothing below moves
    addLeaves(layout);
    m_verdict = new VerdictCard;
    layout->addWidget(m_verdict);
    m_struck = labelOf({}, "soft", "struckReadings");
    m_struck->setTextFormat(Qt::RichText);
    layout->addWidget(m_struck);
}

void GapPart::addLeaves(QVBoxLayout* layout)
{
    auto* heading = new QHBoxLayout;
    m_leafLabel = labelOf({}, "label");
    m_leafLabel->setWordWrap(false);
    m_leafNote = labelOf({}, "soft", "leafNote");
    m_leafNote->setAlignment(Qt::AlignRight);
    heading->addWidget(m_leafLabel);
    heading->addWidget(m_leafNote, 1);
    layout->addLayout(heading);
    m_leaves = new LeafRow;
    m_leaves->setObjectName("leafRow");
    layout->addWidget(m_leaves);
    connect(m_leaves, &LeafRow::readingChosen, this, [this](const GaugeReading& reading) {
        if (m_leavesOpen)
            emit readingChosen(reading);
    });
    connect(m_leaves, &LeafRow::entryRefused, this, [this](const QString& sentence) {
        if (!m_leaves->says(sentence)) // it stands beside the figure
            m_leafNote->setText(sentence);
        announceAnew(*m_leaves, sentence);
        emit figureRefused();
    });
}

void GapPart::setLook(const Look& look)
{
    m_strip->setLook(look);
    m_strip->setMaximumHeight(static_cast<int>(std::lround(kTallestStrip * look.fonts.scale)));
    m_leaves->setLook(look);
    m_verdict->setLook(look);
}

void GapPart::display(const RiggedTodayView& view)
{
    const auto standing = view.standings.find(m_sheet.coupling.id);
    m_standing = standing == view.standings.end() ? CouplingStanding{} : standing->second;
    m_callName = QString::fromStdString(view.airframe.callName);
    m_callPhone = QString::fromStdString(view.airframe.callPhone);
    m_verdict->setPaperDay(view.record->isOfEarlierPaper ? Formats{}.day(view.record->begins.localDay())
                                                         : QString{});
    m_verdict->setSecond(m_sheet.turn == Turn::Second);
    showWhatIsThere();
    showLeaves();
    showVerdict();
    m_verdict->setMovement(m_sheet.movement);
    showStruck(m_struck, view.persons, m_sheet);
}

void GapPart::showWhatIsThere()
{
    m_noGap->setVisible(!hasGap());
    for (QWidget* part :
         std::initializer_list<QWidget*>{m_strip, m_leafLabel, m_leafNote, m_leaves, m_verdict})
        part->setVisible(hasGap());
}

void GapPart::showLeaves()
{
    m_leavesOpen = hasGap() && m_sheet.person && m_sheet.gauge && m_sheet.isMeasuringOpen;
    const bool isTaper = m_sheet.gauge && m_sheet.gauge->set.kind() == GaugeKind::Taper;
    m_leafLabel->setText(isTaper ? RiggedWords::valueRead() : RiggedWords::thickestThatEnters());
    std::optional<Gap> centre;
    if (m_sheet.band)
        centre = Gap::micrometres(static_cast<std::int32_t>(m_sheet.band->median * 1000));
    m_leaves->setGauge(m_sheet.gauge ? m_sheet.gauge->set : GaugeSet{}, centre);
    m_leaves->setEnabled(m_leavesOpen);
    const bool isToBeRead = m_sheet.readings.empty() && !m_sheet.stop;
    m_leaves->setVisible(hasGap() && m_sheet.gauge && (m_leavesOpen || isToBeRead));
    m_leafNote->setText(gaugeNoteOf(m_sheet));
    if (m_sheet.wanted == ReadingWanted::Again)
        m_leafNote->setText(m_sheet.stop && m_sheet.stop->saidNo
                                ? RiggedWords::asFoundHint(foundHere(m_sheet))
                                : RiggedWords::measureAgainHint());
}

void GapPart::showVerdict()
{
    if (!hasGap()) {
        m_verdict->showPrompt(RiggedWords::noGapHere());
        m_strip->setView(stripOf(m_sheet));
    } else if (m_sheet.wanted == ReadingWanted::Corrected || m_sheet.readings.empty()) {
        m_leaves->setChosen(std::nullopt); // nothing of another coupling, and nothing of the first person
        m_verdict->showPrompt(whatToDo());
        m_strip->setView(stripOf(m_sheet));
    } else {
        showLast(m_sheet.readings.back());
    }
}

QString GapPart::whatToDo() const
{
    if (m_sheet.wanted == ReadingWanted::Corrected)
        return RiggedWords::correctNow(); // nothing stands of what was taken back
    const QString first = whyNoFigure();
    if (!first.isEmpty())
        return first;
    return m_sheet.turn == Turn::Second ? RiggedWords::secondOptional(m_sheet.isHidden)
                                        : RiggedWords::readNow();
}

void GapPart::showLast(const SheetReading& last)
{
    m_leaves->setChosen(GaugeReading{last.reading.interval, last.reading.technique});
    if (!m_leavesOpen)
        m_leafLabel->setText(
            RiggedWords::interval(Formats{}.interval(last.reading.interval), last.reading.technique));
    const bool isLocked = last.reading.state == SeatState::Locked;
    showJudged(last.reading.interval, last.reading.state,
               isLocked ? std::optional{last.judgement} : std::nullopt);
    m_verdict->setKept(RiggedWords::savedAt(Formats{}.time(last.reading.stamp.when)));
    GapStripView strip = stripOf(m_sheet);
    strip.reading = last.reading.interval;
    for (std::size_t i = 0; i + 1 < m_sheet.readings.size(); ++i)
        if (!isCorrected(m_sheet.readings[i], m_sheet))
            strip.earlier.push_back(m_sheet.readings[i].reading.interval);
    if (isLocked)
        strip.verdict = verdictShown(*m_verdict, last.judgement);
    m_strip->setView(strip);
}

void GapPart::showJudged(const GapInterval& reading, SeatState state,
                         const std::optional<Judgement>& judgement)
{
    if (judgement)
        m_verdict->show(*judgement, reading, m_standing, m_callName, m_callPhone);
    else
        m_verdict->showAsFound(reading, saysOf(state), m_standing, m_callName, m_callPhone);
    if (m_sheet.stop && judgement && m_verdict->says() != Says::Outside)
        m_verdict->showStopped();
}

void GapPart::showReading(const GaugeReading& reading, const std::optional<Judgement>& judgement)
{
    m_leaves->setChosen(reading);
    m_leafNote->setText(RiggedWords::interval(Formats{}.interval(reading.interval), reading.technique));
    beginAnew();
    showJudged(reading.interval, foundHere(m_sheet), judgement);
    GapStripView strip = stripOf(m_sheet);
    strip.reading = reading.interval;
    if (judgement)
        strip.verdict = verdictShown(*m_verdict, *judgement);
    m_strip->setView(strip);
    m_verdict->setKept(RiggedWords::saving());
    m_leaves->setEnabled(false);
    m_leavesOpen = false;
}

// Another reading, or another joint: what stands there is told, also in the words of the last.
void GapPart::beginAnew()
{
    announce(*m_verdict, {});
}

void GapPart::showNotSaved()
{
    m_verdict->setKept(RiggedWords::notSaved());
    m_leaves->show();
    m_leaves->setEnabled(true);
    m_leavesOpen = true;
}

void GapPart::showMovement(const QString& sentence)
{
    m_verdict->setMovement(sentence);
}

QWidget* GapPart::card() const
{
    return m_verdict;
}

VerdictCard* GapPart::verdict() const
{
    return m_verdict->says() ? m_verdict : nullptr;
}

// What comes before a figure; empty while one can be typed.
QString GapPart::whyNoFigure() const
{
    if (m_sheet.stop && !m_sheet.person)
        return RiggedWords::stoppedHere();
    if (!m_sheet.person)
        return m_sheet.turn == Turn::Second ? RiggedWords::chooseSecondFirst()
                                            : RiggedWords::choosePersonFirst();
    if (m_sheet.stop && !m_leavesOpen)
        return mayMeasureAsFound(*m_sheet.stop) ? RiggedWords::stoppedHereMeasure()
                                                : RiggedWords::stoppedHere();
    if (!m_sheet.flow.mayMeasure() && m_sheet.wanted != ReadingWanted::Corrected)
        return RiggedWords::lookFirst();
    if (!m_sheet.gauge)
        return RiggedWords::chooseGaugeFirst();
    return m_leavesOpen ? QString{} : RiggedWords::alreadyRead();
}

bool GapPart::clearFigure()
{
    return m_leaves->clearFigure();
}

bool GapPart::takeFigureKey(QKeyEvent* event)
{
    return m_leavesOpen && m_leaves->isFigureBegun() && m_leaves->takeKey(event);
}

bool GapPart::takeKey(QKeyEvent* event)
{
    if (m_leavesOpen)
        return m_leaves->takeKey(event);
    if (!hasGap() || !LeafRow::beginsFigure(*event))
        return false;
    const QString why = whyNoFigure();
    // Where the card below has said so all along, it is said that what was typed is lost.
    m_leafNote->setText(m_verdict->prompts(why) ? RiggedWords::figureNotTaken() : why);
    announceAnew(*m_leafNote, m_leafNote->text());
    emit figureRefused();
    return true;
}

bool GapPart::takeMoreKey(const QKeyEvent& event)
{
    if (!isKey(event, VerdictWords::keyMore()) || !m_verdict->hasMore())
        return false;
    m_verdict->toggleMore();
    return true;
}

} // namespace rig
