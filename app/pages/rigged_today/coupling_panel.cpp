#include "app/pages/rigged_today/coupling_panel.h"

#include "app/pages/rigged_today/joint_play_card.h"
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
#include "app/wording/joint_play_words.h"
#include "app/wording/rigged_words.h"
#include "app/wording/verdict_words.h"
#include "core/airframe/name_in.h"

#include <QFrame>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace rig {

namespace {

constexpr double kTallestStrip = 220; // pixels
constexpr double kTall = 820;         // pixels

bool isAnswerTo(CheckKind kind, Answer answer)
{
    if (answer == Answer::Felt)
        return isLook(kind);
    return answer != Answer::CannotSee || kind != CheckKind::Pull;
}

bool mayAnswer(const CouplingSheet& sheet)
{
    return sheet.person && !sheet.stop && sheet.wanted != ReadingWanted::Corrected;
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

// Both persons are told why nothing may be left out at this joint.
QStringList toldOf(const RiggedTodayView& view, const CouplingSheet& sheet)
{
    QStringList told;
    if (const auto asked = view.wholeChecks.find(sheet.coupling.id); asked != view.wholeChecks.end())
        told << RiggedWords::wholeCheckHere(asked->second.kind, Formats{}.day(asked->second.day));
    return told;
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
    buildTop(whole);
    auto* inside = new QWidget;
    auto* layout = new QVBoxLayout{inside};
    layout->setContentsMargins(20, 6, 20, 8);
    layout->setSpacing(8);
    buildCautions(layout);
    buildLook(layout);
    buildMeasure(layout);
    buildPull(layout);
    layout->addWidget(labelOf(RiggedWords::escHint(), "soft"));
    m_scroll = new FlowScroll{inside};
    whole->addWidget(m_scroll, 1);
    auto* rule = new QFrame;
    rule->setProperty("rule", true);
    whole->addWidget(rule);
    buildBottom(whole);
    for (QPushButton* button : findChildren<QPushButton*>())
        button->installEventFilter(this);
}

// What is answered folds away: the second of two quick presses must not land on what came under the finger.
bool CouplingPanel::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::MouseButtonDblClick && watched != m_pressed)
        return true;
    if (event->type() == QEvent::MouseButtonPress)
        m_pressed = watched;
    return QWidget::eventFilter(watched, event);
}

void CouplingPanel::buildTop(QVBoxLayout* layout)
{
    auto* top = new QHBoxLayout;
    top->setContentsMargins(20, 12, 20, 0);
    top->setSpacing(10);
    m_title = labelOf({}, "title", "couplingTitle");
    top->addWidget(m_title, 1);

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
    choice(m_personLabel, m_person, RiggedWords::measuredBy(), "measuredBy");
    choice(m_gaugeLabel, m_gauge, RiggedWords::gauge(), "measuredWith");
    connect(m_person, &QComboBox::activated, this, [this] {
        if (const auto person = m_person->chosen<PersonId>())
            emit personChosen(*person);
    });
    connect(m_gauge, &QComboBox::activated, this, [this] {
        if (const auto gauge = m_gauge->chosen<GaugeId>())
            emit gaugeChosen(*gauge);
    });
    layout->addLayout(top);
}

void CouplingPanel::buildCautions(QVBoxLayout* layout)
{
    m_access = labelOf({}, "soft", "couplingAccess");
    layout->addWidget(m_access);
    m_told = labelOf({}, "caution", "couplingTold");
    layout->addWidget(m_told);
    m_notice = labelOf({}, "caution", "couplingNotice");
    layout->addWidget(m_notice);
    m_stop = new StopCard;
    layout->addWidget(m_stop);
}

void CouplingPanel::buildLook(QVBoxLayout* layout)
{
    m_looked = new QWidget;
    auto* line = new QHBoxLayout{m_looked};
    line->setContentsMargins(0, 0, 0, 0);
    m_lookedText = labelOf({}, "soft", "looked");
    m_lookAgain = buttonOf({}, "showLook", "link");
    connect(m_lookAgain, &QPushButton::clicked, this, &CouplingPanel::toggleLook);
    line->addWidget(m_lookedText, 1);
    line->addWidget(m_lookAgain);
    layout->addWidget(m_looked);
    m_look = new QWidget;
    auto* row = new WrapLayout{10, true};
    row->setContentsMargins(0, 0, 0, 0);
    m_look->setLayout(row);
    addTile(row, CheckKind::BallInSocket, "tile0", AnswerChoice::OrFelt);
    addTile(row, CheckKind::PlungerHome, "tile1", AnswerChoice::OrFelt);
    addTile(row, CheckKind::SleeveAtStop, "tile2", AnswerChoice::OrFelt);
    addTile(row, CheckKind::PinThrough, "tilePin", AnswerChoice::OrFelt);
    addTile(row, CheckKind::Engaged, "tileEngaged", AnswerChoice::OrFelt);
    addTile(row, CheckKind::NoStep, "tileNoStep", AnswerChoice::OrFelt);
    addTile(row, CheckKind::LineConnected, "tileLine", AnswerChoice::OrFelt);
    addTile(row, CheckKind::Connected, "tileConnected", AnswerChoice::OrFelt);
    layout->addWidget(m_look);
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
    m_noGap = labelOf(RiggedWords::noGapHere(), "soft", "noGapHere");
    layout->addWidget(m_noGap);
    m_strip = new GapStripWidget;
    m_strip->setObjectName("gapStrip");
    m_strip->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::MinimumExpanding);
    layout->addWidget(m_strip, 1); // takes what folds away, so that nothing below moves
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
    m_pullRow = new WrapLayout{10, true};
    addTile(m_pullRow, CheckKind::Pull, "tilePull", AnswerChoice::YesNo);
    addTile(m_pullRow, CheckKind::Secured, "tileSecured", AnswerChoice::OrCannotSee);

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
    m_pullRow->addWidget(m_historyBox);
    layout->addLayout(m_pullRow);
    m_plays = labelOf({}, "soft", "jointPlays");
    layout->addWidget(m_plays);
    m_playCard = new JointPlayCard;
    layout->addWidget(m_playCard);
    connect(m_playCard, &JointPlayCard::keepAsked, this, &CouplingPanel::playFelt);
}

void CouplingPanel::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    placeHistory();
}

// In a tall window the last readings have the room under everything; else they stand beside the pull.
void CouplingPanel::placeHistory()
{
    const bool isTall = height() >= kTall * m_scale;
    m_history->setSizePolicy(QSizePolicy::Expanding, isTall ? QSizePolicy::Expanding : QSizePolicy::Fixed);
    if (isTall == m_isTall)
        return;
    m_isTall = isTall;
    auto* flow = qobject_cast<QVBoxLayout*>(m_scroll->widget()->layout());
    if (isTall) {
        m_pullRow->removeWidget(m_historyBox);
        flow->addWidget(m_historyBox, 2);
    } else {
        flow->removeWidget(m_historyBox);
        m_pullRow->addWidget(m_historyBox);
    }
}

void CouplingPanel::buildBottom(QVBoxLayout* layout)
{
    auto* row = new WrapLayout{8, false};
    row->setContentsMargins(20, 8, 20, 10);
    m_correct = buttonOf(RiggedWords::correct(), "correct");
    m_strike = buttonOf(RiggedWords::strike(), "strike");
    m_again = buttonOf(RiggedWords::measureAgain(), "measureAgain");
    m_play = buttonOf(JointPlayWords::openWithKey(), "play");
    m_turn = buttonOf({}, "turn");
    m_next = buttonOf(RiggedWords::nextCoupling(), "next", "primary");
    for (QPushButton* button : {m_correct, m_strike, m_again, m_play, m_turn, m_next})
        row->addWidget(button);
    connect(m_correct, &QPushButton::clicked, this, &CouplingPanel::correctionAsked);
    connect(m_strike, &QPushButton::clicked, this, &CouplingPanel::strikeAsked);
    connect(m_again, &QPushButton::clicked, this, &CouplingPanel::measureAgainAsked);
    connect(m_next, &QPushButton::clicked, this, &CouplingPanel::nextAsked);
    connect(m_play, &QPushButton::clicked, this, [this] {
        m_playCard->open();
        // Once the layout has settled, it may lie below the edge.
        QTimer::singleShot(0, m_scroll, [this] { m_scroll->bringIntoView(m_playCard); });
    });
    connect(m_turn, &QPushButton::clicked, this,
            [this] { emit turnAsked(m_sheet.turn == Turn::First ? Turn::Second : Turn::First); });
    layout->addLayout(row);
}

void CouplingPanel::setLook(const Look& look)
{
    m_strip->setLook(look);
    m_scale = look.fonts.scale;
    m_strip->setMaximumHeight(static_cast<int>(std::lround(kTallestStrip * m_scale)));
    m_leaves->setLook(look);
    m_history->setLook(look);
    m_verdict->setLook(look);
    m_stop->setLook(look);
}

void CouplingPanel::display(const RiggedTodayView& view, const CouplingSheet& sheet, const QString& nextText)
{
    if (m_sheet.coupling.id != sheet.coupling.id || m_sheet.turn != sheet.turn)
        m_isLookWanted = false;
    if (m_sheet.coupling.id != sheet.coupling.id || m_sheet.turn != sheet.turn ||
        m_sheet.person != sheet.person || m_sheet.plays.size() != sheet.plays.size())
        closePlay(); // what was typed was of another joint or person, or it is kept
    m_sheet = sheet;
    const auto standing = view.standings.find(sheet.coupling.id);
    m_standing = standing == view.standings.end() ? CouplingStanding{} : standing->second;
    m_callName = QString::fromStdString(view.airframe.callName);
    m_callPhone = QString::fromStdString(view.airframe.callPhone);
    m_title->setText(QString::fromStdString(sheet.coupling.name));
    const QString access = QString::fromStdString(sheet.coupling.access);
    const QString leaf = hasGapHere() ? QString::fromStdString(sheet.coupling.leafPlace) : QString{};
    m_access->setText(access.isEmpty() || leaf.isEmpty() ? access + leaf
                                                         : access + QStringLiteral(" · ") + leaf);
    sayIn(m_told, toldOf(view, sheet).join(QLatin1Char('\n')));
    fillChoices(view, sheet);
    showWhatIsThere(sheet);
    showStop(view, sheet);
    showQuestions(sheet);
    showMeasure(sheet);
    m_verdict->setMovement(sheet.movement);
    showStruck(view, sheet);
    showBottom(view, sheet);
    m_next->setText(nextText);
    // After the layout has settled: at large text the next thing to do may lie below the edge.
    QTimer::singleShot(0, m_scroll, [this] {
        if (m_verdict->says())
            m_scroll->bringIntoView(m_verdict);
        m_scroll->bringIntoView(nextThing());
    });
}

QWidget* CouplingPanel::nextThing() const
{
    if (m_sheet.stop)
        return m_leavesOpen ? static_cast<QWidget*>(m_leaves) : m_stop;
    if (m_sheet.flow.next == Step::Look)
        return tile(m_sheet.flow.ask.value_or(m_sheet.flow.asks.look.front()));
    if (m_leavesOpen)
        return m_leaves;
    if (m_sheet.flow.isDone() && m_sheet.flow.ask)
        return tile(*m_sheet.flow.ask);
    if (m_sheet.flow.next == Step::Secure)
        return tile(CheckKind::Secured);
    if (m_sheet.flow.next == Step::Pull && m_sheet.flow.asks.parts.pull)
        return tile(CheckKind::Pull);
    if (hasGapHere() && !m_sheet.readings.empty())
        return m_verdict;
    return tile(m_sheet.flow.asks.parts.pull ? CheckKind::Pull : m_sheet.flow.asks.look.back());
}

// Nothing is shown of what this kind of coupling does not have.
void CouplingPanel::showWhatIsThere(const CouplingSheet& sheet)
{
    const bool isMeasured = hasGapHere();
    m_noGap->setVisible(!isMeasured);
    for (QWidget* part : std::initializer_list<QWidget*>{m_gaugeLabel, m_gauge, m_strip, m_leafLabel,
                                                         m_leafNote, m_leaves, m_verdict})
        part->setVisible(isMeasured);
    m_historyBox->setVisible(isMeasured && sheet.turn == Turn::First);
    const bool isRead = isMeasured || sheet.flow.last.has_value();
    for (QPushButton* button : {m_again, m_correct, m_strike})
        button->setVisible(isRead);
}

void CouplingPanel::fillChoices(const RiggedTodayView& view, const CouplingSheet& sheet)
{
    const bool first = sheet.turn == Turn::First;
    const QString firstDoes = hasGapHere() ? RiggedWords::measuredBy() : RiggedWords::lookedAtBy();
    m_personLabel->setText(first ? firstDoes : RiggedWords::lookedBy());
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

// A part that this kind of coupling does not have is not there; what was answered of it all the same is.
void CouplingPanel::showPart(CheckKind kind, const CouplingSheet& sheet, bool open)
{
    const auto answer = answerOf(sheet.flow, kind);
    tile(kind)->setVisible(sheet.flow.asks.has(kind, sheet.turn) || answer);
    tile(kind)->setAnswer(answer);
    tile(kind)->setState(open && sheet.flow.ask == kind, open);
}

void CouplingPanel::showQuestions(const CouplingSheet& sheet)
{
    const bool isOpen = mayAnswer(sheet);
    const bool isBallMissing = sheet.flow.asks.has(CheckKind::BallInSocket, sheet.turn) &&
                               !isSeen(sheet.flow, CheckKind::BallInSocket);
    int number = 0;
    for (const CheckKind kind : kCheckKinds) {
        if (!isLook(kind))
            continue;
        showPart(kind, sheet, isOpen && (kind == CheckKind::BallInSocket || !isBallMissing));
        if (sheet.flow.asks.has(kind, sheet.turn))
            tile(kind)->setTitle(RiggedWords::numbered(++number, RiggedWords::question(kind)));
    }
    showLook(sheet);
    const CouplingKind kind = sheet.coupling.kind;
    tile(CheckKind::Pull)->setHint(RiggedWords::pullHint(kind));
    showPull(sheet);
    tile(CheckKind::Secured)->setHint(RiggedWords::secureHint(kind));
    showPart(CheckKind::Secured, sheet, isOpen && sheet.flow.next >= Step::Secure);
    if (sheet.stop)
        m_notice->clear();
    else if (!sheet.person)
        m_notice->setText(sheet.turn == Turn::First ? (hasGapHere() ? RiggedWords::choosePersonFirst()
                                                                    : RiggedWords::chooseWhoLooksFirst())
                          : sheet.isNobodyApart     ? ConnectedWords::nobodyApart()
                                                    : ConnectedWords::chooseSecond());
    else if (sheet.flow.notSeen())
        m_notice->setText(RiggedWords::notSeenHere(*sheet.flow.notSeen()));
    else if (sheet.turn == Turn::Second && sheet.hasConnectedIt)
        m_notice->setText(ConnectedWords::connectedItToo(m_person->currentText()));
    else
        m_notice->setText(sheet.turn == Turn::First    ? QString{}
                          : sheet.flow.asks.parts.pull ? RiggedWords::secondBlind()
                                                       : RiggedWords::secondLooksBlind());
    m_notice->setVisible(!m_notice->text().isEmpty());
}

void CouplingPanel::showPull(const CouplingSheet& sheet)
{
    showPart(CheckKind::Pull, sheet, mayAnswer(sheet) && sheet.flow.next >= Step::Pull);
}

// What is answered folds away; a “no” and a “cannot see” stay where they can be answered anew.
void CouplingPanel::showLook(const CouplingSheet& sheet)
{
    QStringList looked;
    for (const CheckKind kind : sheet.flow.asks.look)
        if (const auto answer = answerOf(sheet.flow, kind); answer && countsAsYes(*answer))
            looked << RiggedWords::looked(kind, *answer);
    const bool isLooked = looked.size() == static_cast<qsizetype>(sheet.flow.asks.look.size());
    m_looked->setVisible(isLooked);
    m_look->setVisible(!isLooked || m_isLookWanted);
    m_lookedText->setText(looked.join(QLatin1Char(' ')));
    m_lookAgain->setText(m_isLookWanted ? RiggedWords::foldLook() : RiggedWords::showLook());
}

void CouplingPanel::toggleLook()
{
    m_isLookWanted = !m_isLookWanted;
    showLook(m_sheet);
}

void CouplingPanel::showMeasure(const CouplingSheet& sheet)
{
    GapStripView strip;
    strip.band = sheet.band;
    strip.partSeated = sheet.history.partSeated;
    m_leavesOpen = hasGapHere() && sheet.person && sheet.gauge && sheet.isMeasuringOpen;
    const bool taper = sheet.gauge && sheet.gauge->set.kind() == GaugeKind::Taper;
    m_leafLabel->setText(taper ? RiggedWords::valueRead() : RiggedWords::thickestThatEnters());
    std::optional<Gap> centre;
    if (sheet.band)
        centre = Gap::micrometres(static_cast<std::int32_t>(sheet.band->median * 1000));
    m_leaves->setGauge(sheet.gauge ? sheet.gauge->set : GaugeSet{}, centre);
    m_leaves->setEnabled(m_leavesOpen);
    m_leafNote->setText(gaugeNoteOf(sheet));
    m_leaves->setVisible(hasGapHere() && sheet.gauge && (m_leavesOpen || sheet.readings.empty()));

    if (!hasGapHere()) {
        m_verdict->showPrompt(RiggedWords::noGapHere());
    } else if (sheet.wanted == ReadingWanted::Corrected) {
        m_leaves->setChosen(std::nullopt);
        m_verdict->showPrompt(RiggedWords::correctNow()); // nothing stands of what was taken back
    } else if (sheet.readings.empty()) {
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
        if (!m_leavesOpen)
            m_leafLabel->setText(
                RiggedWords::interval(Formats{}.interval(last.reading.interval), last.reading.technique));
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
    m_strip->setView(strip);
    m_history->setSmall(sheet.lastTwelve, 12);
    placeHistory();
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

void CouplingPanel::showBottom(const RiggedTodayView& view, const CouplingSheet& sheet)
{
    const bool asked = sheet.wanted != ReadingWanted::None;
    const bool asFound = hasGapHere() && sheet.stop && mayMeasureAsFound(*sheet.stop);
    m_again->setText(asFound ? RiggedWords::measureAsFound() : RiggedWords::measureAgain());
    const bool isReadAlready = !sheet.readings.empty() || (sheet.stop && sheet.flow.mayMeasure());
    m_again->setEnabled(!m_leavesOpen && sheet.person &&
                        (sheet.stop && sheet.stop->saidNo ? asFound : isReadAlready));
    m_correct->setEnabled(sheet.flow.last && !asked);
    m_strike->setEnabled(sheet.flow.last && sheet.person && !asked);
    m_play->setEnabled(sheet.person && !sheet.stop);
    QStringList plays;
    for (const JointPlay& play : sheet.plays)
        plays << JointPlayWords::sentence(
            play, QString::fromStdString(nameIn(view.persons, std::optional{play.person})));
    if (!plays.isEmpty())
        plays << JointPlayWords::manualHasTheLimit();
    sayIn(m_plays, plays.join(QLatin1Char(' ')));
    m_turn->setText(sheet.turn == Turn::First ? RiggedWords::secondHere() : RiggedWords::firstHere());
    m_next->setEnabled((sheet.flow.isDone() || sheet.stop) && sheet.wanted != ReadingWanted::Corrected);
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
    m_leaves->show();
    m_leaves->setEnabled(true);
    m_leavesOpen = true;
    showPull(m_sheet); // it opened with the reading that is not there
}

void CouplingPanel::showMovement(const QString& sentence)
{
    m_sheet.movement = sentence;
    m_verdict->setMovement(sentence);
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

bool CouplingPanel::closePlay()
{
    return m_playCard->close();
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
        const bool isReadAnewFirst = m_sheet.wanted == ReadingWanted::Corrected;
        if (!m_sheet.person || !m_sheet.flow.ask || m_sheet.stop || isReadAnewFirst)
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
    if (isKey(*event, RiggedWords::keyLook()) && m_looked->isVisible())
        return m_lookAgain->click(), true;
    if (isKey(*event, VerdictWords::keyMore()) && m_verdict->hasMore())
        return m_verdict->toggleMore(), true;
    if (isKey(*event, JointPlayWords::key()) && m_play->isEnabled())
        return m_play->click(), true;
    if (isKey(*event, RiggedWords::keySecondPerson()))
        return m_turn->click(), true;
    if (m_leavesOpen && m_leaves->takeKey(event))
        return true;
    if (!hasGapHere() && LeafRow::beginsFigure(*event))
        return showNotice(RiggedWords::noGapHere()), true;
    if (!m_leavesOpen && LeafRow::beginsFigure(*event))
        return m_leafNote->setText(whyNoFigure()), true;
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (enter && m_next->isEnabled())
        return m_next->click(), true;
    return false;
}

} // namespace rig
