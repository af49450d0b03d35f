#include "app/pages/rigged_today/coupling_panel.h"

#include "app/pages/rigged_today/stop_card.h"
#include "app/widgets/choice_box.h"
#include "app/widgets/flow_scroll.h"
#include "app/widgets/gap_strip_widget.h"
#include "app/widgets/leaf_row.h"
#include "app/widgets/parts.h"
#include "app/widgets/trend_widget.h"
#include "app/widgets/verdict_card.h"
#include "app/widgets/wrap_layout.h"
#include "app/wording/connected_words.h"
#include "app/wording/control_words.h"
#include "app/wording/formats.h"
#include "app/wording/rigged_words.h"
#include "core/airframe/name_in.h"

#include <QFrame>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

namespace rig {

namespace {

constexpr std::array kLook{CheckKind::BallInSocket, CheckKind::PlungerHome, CheckKind::SleeveAtStop};

bool isAnswerTo(CheckKind kind, Answer answer)
{
    if (answer == Answer::Felt)
        return std::ranges::find(kLook, kind) != kLook.end();
    return answer != Answer::CannotSee || kind != CheckKind::Pull;
}

bool isOwnFinding(const CouplingSheet& sheet)
{
    if (sheet.turn == Turn::First)
        return true;
    if (sheet.stop->saidNo)
        return answerOf(sheet.flow, *sheet.stop->saidNo) == Answer::No;
    return std::ranges::any_of(
        sheet.readings, [](const SheetReading& one) { return one.judgement.verdict == Verdict::Outside; });
}

QString whyStopped(const CouplingSheet& sheet)
{
    const QString name = QString::fromStdString(sheet.coupling.name);
    if (!isOwnFinding(sheet))
        return RiggedWords::isStopped(name);
    return sheet.stop->saidNo ? RiggedWords::saidNo(name, *sheet.stop->saidNo)
                              : RiggedWords::readOutside(name);
}

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

} // namespace

CouplingPanel::CouplingPanel(QWidget* parent) : QWidget{parent}
{
    auto* whole = new QVBoxLayout{this};
    whole->setContentsMargins(0, 0, 0, 0);
    whole->setSpacing(0);
    auto* inside = new QWidget;
    auto* layout = new QVBoxLayout{inside};
    layout->setContentsMargins(20, 12, 20, 8);
    layout->setSpacing(8);
    buildTop(layout);
    buildLook(layout);
    buildMeasure(layout);
    buildPull(layout);
    layout->addStretch(1);
    m_scroll = new FlowScroll{inside};
    whole->addWidget(m_scroll, 1);
    auto* rule = new QFrame;
    rule->setProperty("rule", true);
    whole->addWidget(rule);
    buildBottom(whole);
}

void CouplingPanel::buildTop(QVBoxLayout* layout)
{
    auto* top = new QHBoxLayout;
    auto* names = new QVBoxLayout;
    names->setSpacing(2);
    m_title = labelOf({}, "title", "couplingTitle");
    m_access = labelOf({}, "soft");
    names->addWidget(m_title);
    names->addWidget(m_access);
    top->addLayout(names, 1);

    const auto choice = [top](QLabel*& label, ChoiceBox*& box, const QString& text, const char* name) {
        auto* column = new QVBoxLayout;
        column->setSpacing(2);
        label = new QLabel{text};
        label->setProperty("kind", "label");
        box = new ChoiceBox{text};
        box->setObjectName(QLatin1String(name));
        label->setBuddy(box);
        column->addWidget(label);
        column->addWidget(box);
        column->addStretch(1);
        top->addLayout(column);
    };
    QLabel* gaugeLabel = nullptr;
    choice(m_personLabel, m_person, RiggedWords::measuredBy(), "measuredBy");
    choice(gaugeLabel, m_gauge, RiggedWords::gauge(), "measuredWith");
    connect(m_person, &QComboBox::activated, this, [this] {
        if (const auto person = m_person->chosen<PersonId>())
            emit personChosen(*person);
    });
    connect(m_gauge, &QComboBox::activated, this, [this] {
        if (const auto gauge = m_gauge->chosen<GaugeId>())
            emit gaugeChosen(*gauge);
    });
    layout->addLayout(top);
    m_notice = labelOf({}, "caution", "couplingNotice");
    layout->addWidget(m_notice);
    m_stop = new StopCard;
    layout->addWidget(m_stop);
}

void CouplingPanel::buildLook(QVBoxLayout* layout)
{
    auto* row = new WrapLayout{10, true};
    addTile(row, CheckKind::BallInSocket, "tile0", AnswerChoice::OrFelt);
    addTile(row, CheckKind::PlungerHome, "tile1", AnswerChoice::OrFelt);
    addTile(row, CheckKind::SleeveAtStop, "tile2", AnswerChoice::OrFelt);
    layout->addLayout(row);
}

QuestionTile* CouplingPanel::addTile(QLayout* layout, CheckKind kind, const char* name, AnswerChoice choice)
{
    auto* one = new QuestionTile{RiggedWords::question(kind), RiggedWords::hint(kind), choice};
    one->setObjectName(QLatin1String(name));
    connect(one, &QuestionTile::answered, this, [this, kind](Answer answer) { emit answered(kind, answer); });
    m_tiles[static_cast<std::size_t>(kind)] = one;
    layout->addWidget(one);
    return one;
}

void CouplingPanel::buildMeasure(QVBoxLayout* layout)
{
    m_strip = new GapStripWidget;
    m_strip->setObjectName("gapStrip");
    layout->addWidget(m_strip);
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
    m_verdict = new VerdictCard;
    layout->addWidget(m_verdict);
    m_struck = labelOf({}, "soft", "struckReadings");
    m_struck->setTextFormat(Qt::RichText);
    layout->addWidget(m_struck);
    connect(m_leaves, &LeafRow::readingChosen, this, &CouplingPanel::chooseReading);
    connect(m_leaves, &LeafRow::entryRefused, this,
            [this](const QString& sentence) { m_leafNote->setText(sentence); });
}

void CouplingPanel::buildPull(QVBoxLayout* layout)
{
    auto* row = new WrapLayout{10, true};
    addTile(row, CheckKind::Pull, "tilePull", AnswerChoice::YesNo);
    addTile(row, CheckKind::Secured, "tileSecured", AnswerChoice::OrCannotSee);

    m_historyBox = new QWidget;
    auto* history = new QVBoxLayout{m_historyBox};
    history->setContentsMargins(0, 0, 0, 0);
    history->setSpacing(2);
    auto* label = labelOf({}, "label");
    label->setText(RiggedWords::lastTwelve());
    m_history = new TrendWidget;
    m_history->setObjectName("lastTwelve");
    history->addWidget(label);
    history->addWidget(m_history, 1);
    row->addWidget(m_historyBox);
    layout->addLayout(row);
}

void CouplingPanel::buildBottom(QVBoxLayout* layout)
{
    auto* row = new WrapLayout{8, false};
    row->setContentsMargins(20, 8, 20, 10);
    auto* hint = labelOf({}, "soft");
    hint->setText(RiggedWords::escHint());
    hint->setWordWrap(false);
    row->addWidget(hint);
    m_correct = buttonOf(RiggedWords::correct(), "correct");
    m_strike = buttonOf(RiggedWords::strike(), "strike");
    m_again = buttonOf(RiggedWords::measureAgain(), "measureAgain");
    m_turn = buttonOf({}, "turn");
    m_next = buttonOf(RiggedWords::nextCoupling(), "next", "primary");
    for (QPushButton* button : {m_correct, m_strike, m_again, m_turn, m_next})
        row->addWidget(button);
    connect(m_correct, &QPushButton::clicked, this, &CouplingPanel::correctionAsked);
    connect(m_strike, &QPushButton::clicked, this, &CouplingPanel::strikeAsked);
    connect(m_again, &QPushButton::clicked, this, &CouplingPanel::measureAgainAsked);
    connect(m_next, &QPushButton::clicked, this, &CouplingPanel::nextAsked);
    connect(m_turn, &QPushButton::clicked, this,
            [this] { emit turnAsked(m_sheet.turn == Turn::First ? Turn::Second : Turn::First); });
    layout->addLayout(row);
}

void CouplingPanel::setLook(const Look& look)
{
    m_strip->setLook(look);
    m_leaves->setLook(look);
    m_history->setLook(look);
    m_verdict->setLook(look);
    m_stop->setLook(look);
}

void CouplingPanel::display(const RiggedTodayView& view, const CouplingSheet& sheet, const QString& nextText)
{
    m_sheet = sheet;
    const auto standing = view.standings.find(sheet.coupling.id);
    m_standing = standing == view.standings.end() ? CouplingStanding{} : standing->second;
    m_callName = QString::fromStdString(view.airframe.callName);
    m_callPhone = QString::fromStdString(view.airframe.callPhone);
    m_title->setText(QString::fromStdString(sheet.coupling.name));
    const QString access = QString::fromStdString(sheet.coupling.access);
    const QString leaf = QString::fromStdString(sheet.coupling.leafPlace);
    m_access->setText(access.isEmpty() || leaf.isEmpty() ? access + leaf
                                                         : access + QStringLiteral(" · ") + leaf);
    fillChoices(view, sheet);
    showStop(view, sheet);
    showQuestions(sheet);
    showMeasure(sheet);
    showStruck(view, sheet);
    showBottom(sheet);
    m_next->setText(nextText);
    // After the layout has settled: at large text the next thing to do may lie below the edge.
    QTimer::singleShot(0, m_scroll, [this] { m_scroll->ensureWidgetVisible(nextThing(), 0, 12); });
}

QWidget* CouplingPanel::nextThing() const
{
    if (m_sheet.stop)
        return m_leavesOpen ? static_cast<QWidget*>(m_leaves) : m_stop;
    if (m_sheet.flow.next == Step::Look)
        return tile(m_sheet.flow.ask.value_or(CheckKind::BallInSocket));
    if (m_leavesOpen)
        return m_leaves;
    if (m_sheet.flow.isDone() && m_sheet.flow.ask)
        return tile(*m_sheet.flow.ask);
    if (m_sheet.flow.next == Step::Secure)
        return tile(CheckKind::Secured);
    return m_sheet.readings.empty() || m_sheet.flow.isDone() ? static_cast<QWidget*>(tile(CheckKind::Pull))
                                                             : m_verdict;
}

void CouplingPanel::fillChoices(const RiggedTodayView& view, const CouplingSheet& sheet)
{
    const bool first = sheet.turn == Turn::First;
    m_personLabel->setText(first ? RiggedWords::measuredBy() : RiggedWords::lookedBy());
    m_person->setAccessibleName(m_personLabel->text());
    std::vector<ChoiceBox::Entry> persons;
    for (const Person& person : view.persons) {
        const QString name = QString::fromStdString(person.name);
        const auto why = sheet.notSecond.find(person.id);
        const bool isOpen = first || why == sheet.notSecond.end();
        persons.push_back(ChoiceBox::entry(isOpen ? name : ConnectedWords::cannotBeSecond(name, why->second),
                                           person.id, isOpen));
    }
    m_person->fillWith(RiggedWords::choosePerson(), persons);
    m_person->choose(sheet.person);
    m_gauge->fill(RiggedWords::chooseGauge(), view.gauges);
    m_gauge->choose(sheet.gauge ? std::optional{sheet.gauge->id} : std::nullopt);
}

// Whoever comes back to the joint meets it again. What the other person found is not told by it.
void CouplingPanel::showStop(const RiggedTodayView& view, const CouplingSheet& sheet)
{
    if (sheet.stop)
        m_stop->say(whyStopped(sheet),
                    ControlWords::leaveAndCall(QString::fromStdString(view.airframe.callName),
                                               QString::fromStdString(view.airframe.callPhone)),
                    RiggedWords::tagAndPhotograph());
    m_stop->setVisible(sheet.stop.has_value());
}

void CouplingPanel::showQuestions(const CouplingSheet& sheet)
{
    const bool someone = sheet.person.has_value() && !sheet.stop;
    for (const CheckKind kind : kLook) {
        tile(kind)->setAnswer(answerOf(sheet.flow, kind));
        const bool isBallThere = sheet.flow.ballInSocket && countsAsYes(*sheet.flow.ballInSocket);
        const bool open = kind == CheckKind::BallInSocket || isBallThere;
        tile(kind)->setState(someone && sheet.flow.ask == kind, someone && open);
    }
    tile(CheckKind::Pull)->setAnswer(sheet.flow.pull);
    const bool pullOpen = sheet.flow.next >= Step::Pull;
    tile(CheckKind::Pull)->setState(someone && sheet.flow.ask == CheckKind::Pull, someone && pullOpen);
    QuestionTile* secured = tile(CheckKind::Secured);
    secured->setVisible(sheet.turn == Turn::First);
    secured->setHint(RiggedWords::secureHint(sheet.coupling.securing));
    secured->setAnswer(sheet.flow.secured);
    secured->setState(someone && sheet.flow.ask == CheckKind::Secured,
                      someone && (sheet.flow.next == Step::Secure || sheet.flow.next == Step::Done));
    if (sheet.stop)
        m_notice->clear();
    else if (!someone)
        m_notice->setText(sheet.turn == Turn::First ? RiggedWords::choosePersonFirst()
                          : sheet.isNobodyApart     ? ConnectedWords::nobodyApart()
                                                    : ConnectedWords::chooseSecond());
    else if (sheet.flow.notSeen())
        m_notice->setText(RiggedWords::notSeenHere(*sheet.flow.notSeen()));
    else if (sheet.turn == Turn::Second && sheet.hasConnectedIt)
        m_notice->setText(ConnectedWords::connectedItToo(m_person->currentText()));
    else
        m_notice->setText(sheet.turn == Turn::Second ? RiggedWords::secondBlind() : QString{});
    m_notice->setVisible(!m_notice->text().isEmpty());
}

void CouplingPanel::showMeasure(const CouplingSheet& sheet)
{
    GapStripView strip;
    strip.band = sheet.band;
    strip.partSeated = sheet.history.partSeated;
    m_leavesOpen = sheet.person && sheet.gauge && sheet.isMeasuringOpen;
    const bool taper = sheet.gauge && sheet.gauge->set.kind() == GaugeKind::Taper;
    m_leafLabel->setText(taper ? RiggedWords::valueRead() : RiggedWords::thickestThatEnters());
    std::optional<Gap> centre;
    if (sheet.band)
        centre = Gap::micrometres(static_cast<std::int32_t>(sheet.band->median * 1000));
    m_leaves->setGauge(sheet.gauge ? sheet.gauge->set : GaugeSet{}, centre);
    m_leaves->setEnabled(m_leavesOpen);
    m_leafNote->setText(gaugeNoteOf(sheet));

    if (sheet.readings.empty()) {
        m_leaves->setChosen(std::nullopt); // nothing of another coupling, and nothing of the first person
        const QString first = whyNoFigure();
        m_verdict->showPrompt(!first.isEmpty()             ? first
                              : sheet.turn == Turn::Second ? RiggedWords::secondOptional()
                                                           : RiggedWords::readNow());
    } else {
        const SheetReading& last = sheet.readings.back();
        strip.reading = last.reading.interval;
        for (std::size_t i = 0; i + 1 < sheet.readings.size(); ++i)
            strip.earlier.push_back(sheet.readings[i].reading.interval);
        m_leaves->setChosen(GaugeReading{last.reading.interval, last.reading.technique});
        if (last.reading.state == SeatState::Locked) {
            m_verdict->show(last.judgement, last.reading.interval, m_standing, m_callName, m_callPhone);
            strip.verdict = verdictShown(last.judgement);
        } else {
            m_verdict->showAsFound(last.reading.interval, m_standing, m_callName, m_callPhone);
        }
        m_verdict->setKept(RiggedWords::savedAt(Formats{}.time(last.reading.stamp.when)));
    }
    if (sheet.wanted == ReadingWanted::Again)
        m_leafNote->setText(sheet.stop && sheet.stop->saidNo ? RiggedWords::asFoundHint()
                                                             : RiggedWords::measureAgainHint());
    if (sheet.wanted == ReadingWanted::Corrected)
        m_leafNote->setText(RiggedWords::correctNow());
    m_strip->setView(strip);
    m_history->setSmall(sheet.lastTwelve, 12);
    m_historyBox->setVisible(sheet.turn == Turn::First);
}

// They say nothing any more, and stay to be read.
void CouplingPanel::showStruck(const RiggedTodayView& view, const CouplingSheet& sheet)
{
    const Formats formats;
    QStringList plain;
    QStringList drawn;
    for (const StruckReading& one : sheet.flow.struck) {
        const QString who = QString::fromStdString(nameIn(view.persons, one.strike.stamp.by));
        const QString interval = formats.interval(one.reading.interval);
        const QString time = formats.time(one.strike.stamp.when);
        const QString reason = QString::fromStdString(one.strike.reason);
        plain << RiggedWords::struck(interval, time, who, reason);
        drawn << RiggedWords::struck(QStringLiteral("<s>%1</s>").arg(interval.toHtmlEscaped()), time,
                                     who.toHtmlEscaped(), reason.toHtmlEscaped());
    }
    sayIn(m_struck, drawn.join(QStringLiteral("<br>")));
    m_struck->setAccessibleName(plain.join(QLatin1Char('\n')));
}

void CouplingPanel::showBottom(const CouplingSheet& sheet)
{
    const bool asked = sheet.wanted != ReadingWanted::None;
    const bool asFound = sheet.stop && mayMeasureAsFound(*sheet.stop);
    m_again->setText(asFound ? RiggedWords::measureAsFound() : RiggedWords::measureAgain());
    const bool isReadAlready = !sheet.readings.empty() || (sheet.stop && sheet.flow.mayMeasure());
    m_again->setEnabled(!m_leavesOpen && sheet.person &&
                        (sheet.stop && sheet.stop->saidNo ? asFound : isReadAlready));
    m_correct->setEnabled(sheet.flow.last && !asked);
    m_strike->setEnabled(sheet.flow.last && sheet.person && !asked);
    m_turn->setText(sheet.turn == Turn::First ? RiggedWords::secondHere() : RiggedWords::firstHere());
    m_next->setEnabled(sheet.flow.isDone() || sheet.stop);
}

void CouplingPanel::chooseReading(const GaugeReading& reading)
{
    if (!m_leavesOpen)
        return;
    emit readingChosen(reading);
}

void CouplingPanel::showReading(const GaugeReading& reading, const std::optional<Judgement>& judgement)
{
    m_leaves->setChosen(reading);
    GapStripView strip;
    strip.band = m_sheet.band;
    strip.partSeated = m_sheet.history.partSeated;
    strip.reading = reading.interval;
    m_leafNote->setText(RiggedWords::interval(Formats{}.interval(reading.interval), reading.technique));
    if (judgement) {
        m_verdict->show(*judgement, reading.interval, m_standing, m_callName, m_callPhone);
        strip.verdict = verdictShown(*judgement);
    } else {
        m_verdict->showAsFound(reading.interval, m_standing, m_callName, m_callPhone);
    }
    m_strip->setView(strip);
    m_verdict->setKept(RiggedWords::saving());
    m_leaves->setEnabled(false);
    m_leavesOpen = false;
    // The pull opens with the reading: whoever presses it at once waits for the save, and is not left out.
    // After an outside one nothing follows.
    const bool isAsked = judgement && judgement->verdict != Verdict::Outside && !m_sheet.stop;
    tile(CheckKind::Pull)->setState(isAsked, isAsked);
}

// The strip has a reading's colour only where the card has its mark.
std::optional<Verdict> CouplingPanel::verdictShown(const Judgement& judgement) const
{
    return m_verdict->says() == saysOf(judgement.verdict) ? std::optional{judgement.verdict} : std::nullopt;
}

void CouplingPanel::showNotSaved()
{
    m_verdict->setKept(RiggedWords::notSaved());
    m_leaves->setEnabled(true);
    m_leavesOpen = true;
}

void CouplingPanel::showNotice(const QString& sentence)
{
    m_notice->setText(sentence);
    m_notice->setVisible(true);
}

// What comes before a figure; empty while one can be typed.
QString CouplingPanel::whyNoFigure() const
{
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

bool CouplingPanel::clearFigure()
{
    return m_leaves->clearFigure();
}

bool CouplingPanel::takeKey(QKeyEvent* event)
{
    const auto answerKey = [event]() -> std::optional<Answer> {
        if (isKey(*event, RiggedWords::keyYes()))
            return Answer::Yes;
        if (isKey(*event, RiggedWords::keyNo()))
            return Answer::No;
        if (isKey(*event, RiggedWords::keyCannotSee()))
            return Answer::CannotSee;
        if (isKey(*event, RiggedWords::keyFelt()))
            return Answer::Felt;
        return std::nullopt;
    };
    // Inside a figure no letter answers or asks for anything: it spoils the figure, which is then refused.
    if (m_leavesOpen && m_leaves->isFigureBegun() && m_leaves->takeKey(event))
        return true;
    if (const auto answer = answerKey()) {
        if (!m_sheet.person || !m_sheet.flow.ask || m_sheet.stop)
            return false;
        if (!isAnswerTo(*m_sheet.flow.ask, *answer))
            return false;
        emit answered(*m_sheet.flow.ask, *answer);
        return true;
    }
    if (isKey(*event, RiggedWords::keyMeasureAgain()) && m_again->isEnabled())
        return m_again->click(), true;
    if (isKey(*event, RiggedWords::keyCorrect()) && m_correct->isEnabled())
        return m_correct->click(), true;
    if (isKey(*event, RiggedWords::keyStrike()) && m_strike->isEnabled())
        return m_strike->click(), true;
    if (isKey(*event, RiggedWords::keySecondPerson()))
        return m_turn->click(), true;
    if (m_leavesOpen && m_leaves->takeKey(event))
        return true;
    if (!m_leavesOpen && LeafRow::beginsFigure(*event))
        return m_leafNote->setText(whyNoFigure()), true;
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (enter && m_next->isEnabled())
        return m_next->click(), true;
    return false;
}

} // namespace rig
