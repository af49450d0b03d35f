#include "app/pages/rigged_today/coupling_panel.h"

#include "app/pages/page.h"
#include "app/pages/rigged_today/answer_key.h"
#include "app/pages/rigged_today/coupling_buttons.h"
#include "app/pages/rigged_today/coupling_head.h"
#include "app/pages/rigged_today/coupling_questions.h"
#include "app/pages/rigged_today/gap_part.h"
#include "app/pages/rigged_today/joint_play_card.h"
#include "app/pages/rigged_today/rigging_notices.h"
#include "app/pages/rigged_today/stop_card.h"
#include "app/widgets/announcer.h"
#include "app/widgets/flow_scroll.h"
#include "app/widgets/leaf_row.h"
#include "app/widgets/parts.h"
#include "app/widgets/person_note.h"
#include "app/widgets/trend_widget.h"
#include "app/widgets/verdict_card.h"
#include "app/widgets/wrap_layout.h"
#include "app/wording/connected_words.h"
#include "app/wording/control_words.h"
#include "app/wording/formats.h"
#include "app/wording/joint_play_words.h"
#include "app/wording/photo_words.h"
#include "app/wording/rigged_words.h"
#include "app/wording/stop_words.h"
#include "core/airframe/name_in.h"

#include <QFrame>
#include <QHBoxLayout>
#include <QResizeEvent>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace rig {

namespace {

constexpr double kTall = 820;          // pixels
constexpr double kLookWithPhoto = 620; // the three questions stand below a large photo
constexpr int kShareOfFoot = 3;        // of three parts of the height the buttons below have one at most

bool isAnswerTo(CheckKind kind, Answer answer)
{
    if (answer == Answer::Felt)
        return isLook(kind);
    return answer != Answer::CannotSee || kind != CheckKind::Pull;
}

// Whoever typed on before it was seen counted on another one. That there is no band was seen before.
bool isToBeReadFirst(Verdict verdict)
{
    switch (verdict) {
    case Verdict::Outside:
    case Verdict::CannotTell:
    case Verdict::NearEdge:
        return true;
    case Verdict::NoBandYet:
    case Verdict::Inside:
        break;
    }
    return false;
}

bool isOwnFinding(const CouplingSheet& sheet)
{
    if (sheet.turn == Turn::First)
        return true;
    if (sheet.stop->saidNo)
        return answerOf(sheet.flow, *sheet.stop->saidNo) == Answer::No;
    if (sheet.slip)
        return sheet.slip->taken.slip.turn == sheet.turn;
    return std::ranges::any_of(
        sheet.readings, [](const SheetReading& one) { return one.judgement.verdict == Verdict::Outside; });
}

StopWords::Slip textsOf(const SlipThatStops& slip)
{
    const Formats formats;
    const TakenBack& taken = slip.taken;
    return {formats.interval(taken.slip.interval),
            taken.instead ? formats.interval(taken.instead->interval) : QString{},
            QString::fromStdString(slip.by), QString::fromStdString(taken.reason)};
}

QString foundOf(const CouplingSheet& sheet)
{
    const QString name = QString::fromStdString(sheet.coupling.name);
    if (sheet.stop->surface)
        return StopWords::surface(name, QString::fromStdString(sheet.stopSurface), *sheet.stop->surface);
    if (!isOwnFinding(sheet))
        return RiggedWords::isStopped(name);
    if (sheet.slip)
        return StopWords::slip(name, textsOf(*sheet.slip)) + QLatin1Char(' ') + StopWords::stays();
    return sheet.stop->saidNo ? RiggedWords::saidNo(name, *sheet.stop->saidNo)
                              : RiggedWords::readOutside(name);
}

QString whyStopped(const CouplingSheet& sheet)
{
    return sheet.stoppedSince
               ? foundOf(sheet) + QLatin1Char(' ') + StopWords::openSince(Formats{}.day(*sheet.stoppedSince))
               : foundOf(sheet);
}

// Both persons are told why nothing may be left out at this joint.
QStringList toldOf(const RiggedTodayView& view, const CouplingSheet& sheet)
{
    QStringList told;
    if (const auto asked = view.wholeChecks.find(sheet.coupling.id); asked != view.wholeChecks.end())
        told << RiggedWords::wholeCheckHere(asked->second.kind, Formats{}.day(asked->second.day));
    return told;
}

// Where it is and where the leaf goes in.
QString accessOf(const CouplingSheet& sheet)
{
    const QString access = QString::fromStdString(sheet.coupling.access);
    const QString leaf =
        sheet.flow.asks.parts.gap ? QString::fromStdString(sheet.coupling.leafPlace) : QString{};
    return access.isEmpty() || leaf.isEmpty() ? access + leaf : access + QStringLiteral(" · ") + leaf;
}

} // namespace

CouplingPanel::CouplingPanel(QWidget* parent) : QWidget{parent}
{
    auto* whole = new QVBoxLayout{this};
    whole->setContentsMargins(0, 0, 0, 0);
    whole->setSpacing(0);
    m_head = new CouplingHead{whole, this};
    auto* inside = new QWidget;
    auto* layout = new QVBoxLayout{inside};
    layout->setContentsMargins(20, 6, 20, 8);
    layout->setSpacing(8);
    buildCautions(layout);
    m_pullRow = new WrapLayout{10, true};
    m_questions = new CouplingQuestions{layout, m_pullRow, this};
    m_gap = new GapPart{m_sheet, layout, this};
    buildPull(layout);
    m_esc = labelOf({}, "soft", "couplingEsc");
    layout->addWidget(m_esc);
    m_scroll = new FlowScroll{inside};
    whole->addWidget(m_scroll, 1);
    auto* rule = new QFrame;
    rule->setProperty("rule", true);
    whole->addWidget(rule);
    m_buttons = new CouplingButtons{whole, this};
    connectParts();
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

void CouplingPanel::buildCautions(QVBoxLayout* layout)
{
    m_access = labelOf({}, "soft", "couplingAccess");
    auto* first = new QHBoxLayout;
    first->setSpacing(14);
    first->addWidget(m_access, 1);
    m_standing = new PersonNote{"personStanding"};
    first->addWidget(m_standing);
    layout->addLayout(first);
    m_told = labelOf({}, "caution", "couplingTold");
    layout->addWidget(m_told);
    m_notice = labelOf({}, "caution", "couplingNotice");
    layout->addWidget(m_notice);
    m_stop = new StopCard;
    layout->addWidget(m_stop);
}

void CouplingPanel::buildPull(QVBoxLayout* layout)
{
    m_historyBox = new QWidget;
    auto* history = new QVBoxLayout{m_historyBox};
    history->setContentsMargins(0, 0, 0, 0);
    history->setSpacing(2);
    m_history = new TrendWidget;
    m_history->setObjectName("lastTwelve");
    history->addWidget(labelOf(RiggedWords::lastTwelve(), "label"));
    history->addWidget(m_history, 1);
    m_pullRow->addWidget(m_historyBox);
    layout->addLayout(m_pullRow);
    m_plays = labelOf({}, "soft", "jointPlays");
    layout->addWidget(m_plays);
    m_playCard = new JointPlayCard;
    layout->addWidget(m_playCard);
}

void CouplingPanel::connectParts()
{
    connect(m_head, &CouplingHead::personChosen, this, &CouplingPanel::personChosen);
    connect(m_head, &CouplingHead::photoAsked, this, &CouplingPanel::enlarge);
    connect(m_head, &CouplingHead::gaugeChosen, this, &CouplingPanel::gaugeChosen);
    connect(m_questions, &CouplingQuestions::answered, this, &CouplingPanel::answered);
    connect(this, &CouplingPanel::answered, this, [this] { m_isVerdictNew = false; });
    connect(m_gap, &GapPart::readingChosen, this, &CouplingPanel::readingChosen);
    connect(m_gap, &GapPart::figureRefused, this, [this] {
        if (!m_gap->isMeasuring()) {
            m_scroll->bringIntoView(m_gap->card()); // it says what comes first
            m_scroll->bringIntoView(nextThing());   // and there it is, where there is not room for both
        }
        emit restIsLost();
    });
    connect(m_playCard, &JointPlayCard::keepAsked, this, &CouplingPanel::playFelt);
    connect(m_buttons, &CouplingButtons::againAsked, this, &CouplingPanel::measureAgainAsked);
    connect(m_buttons, &CouplingButtons::correctionAsked, this, &CouplingPanel::correctionAsked);
    connect(m_buttons, &CouplingButtons::strikeAsked, this, &CouplingPanel::strikeAsked);
    connect(m_buttons, &CouplingButtons::turnAsked, this, &CouplingPanel::turnAsked);
    connect(m_buttons, &CouplingButtons::nextAsked, this, &CouplingPanel::nextAsked);
    connect(m_buttons, &CouplingButtons::playAsked, this, [this] {
        m_playCard->open();
        // Once the layout has settled, it may lie below the edge.
        QTimer::singleShot(0, m_scroll, [this] { m_scroll->bringIntoView(m_playCard); });
    });
}

void CouplingPanel::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    m_buttons->setRoom(height() / kShareOfFoot);
    placeHistory();
    // A line that came above the page takes its room from below, where the next thing to press may stand.
    if (event->size().height() < event->oldSize().height() && isVisible())
        QTimer::singleShot(0, m_scroll, [this] { bringIntoSight(); });
}

// While the joint is looked at the photo is what one looks from; in a tall window there is room for it at any
// step. Once the look is answered it folds away with it, and the reading has the room.
void CouplingPanel::sizePhoto()
{
    const double room = height() / m_look.fonts.scale;
    const bool isLooking = m_sheet.flow.next == Step::Look && !m_sheet.stop;
    m_head->setLook(m_look, room >= kTall || (isLooking && room >= kLookWithPhoto));
}

// In a tall window the last readings have the room under everything; else they stand beside the pull.
void CouplingPanel::placeHistory()
{
    const bool isTall = height() >= kTall * m_look.fonts.scale;
    sizePhoto();
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

void CouplingPanel::setLook(const Look& look)
{
    m_look = look;
    sizePhoto();
    m_standing->setLook(look);
    m_gap->setLook(look);
    m_history->setLook(look);
    m_stop->setLook(look);
}

void CouplingPanel::display(const RiggedTodayView& view, const CouplingSheet& sheet, const QString& nextText)
{
    const bool isElsewhere = m_sheet.coupling.id != sheet.coupling.id || m_sheet.turn != sheet.turn;
    if (isElsewhere)
        m_questions->foldLook();
    if (isElsewhere || sheet.stop)
        PhotoCover::endOn(*this);
    if (isElsewhere || m_sheet.person != sheet.person || m_sheet.plays.size() != sheet.plays.size())
        closePlay(); // what was typed was of another joint or person, or it is kept
    if (isElsewhere) {
        m_gap->beginAnew();
        announce(*m_scroll, {});
    }
    m_isStopRead = m_isStopRead && !isElsewhere && sheet.stop;
    m_isVerdictNew = m_isVerdictNew && !isElsewhere;
    m_sheet = sheet;
    m_isFromPaper = view.record->enteredBy.has_value();
    m_head->display(view, sheet);
    m_access->setText(accessOf(sheet));
    m_standing->show(standingOf(view, sheet.person), m_head->person());
    sayIn(m_told, toldOf(view, sheet).join(QLatin1Char('\n')));
    m_historyBox->setVisible(hasGapHere() && sheet.turn == Turn::First);
    showStop(view);
    m_questions->display(sheet);
    sayIn(m_notice, firstThing());
    const QString esc = view.record->enteredBy ? RiggedWords::escHintOnPaper() : RiggedWords::escHint();
    sayIn(m_esc, sheet.stop ? QString{} : esc); // a stop leaves nothing to interrupt
    m_gap->display(view);
    m_history->setSmall(sheet.lastTwelve, 12);
    placeHistory();
    showPlays(view);
    m_buttons->display(sheet, m_gap->isMeasuring(), nextText);
    setProperty(kIsAbout, QString::fromStdString(sheet.coupling.name));
    announce(*this, QString::fromStdString(sheet.coupling.name));
    announce(*m_scroll, whatIsAsked());
    // After the layout has settled: at large text the next thing to do may lie below the edge.
    QTimer::singleShot(0, m_scroll, [this] { bringIntoSight(); });
}

// The next thing to do, as whoever listens is asked for it.
QString CouplingPanel::whatIsAsked() const
{
    if (m_sheet.stop || !m_sheet.mayAnswer())
        return {};
    if (m_gap->isMeasuring())
        return RiggedWords::readNow();
    return m_sheet.flow.ask ? RiggedWords::question(*m_sheet.flow.ask) : QString{};
}

// Where the joint is stopped nothing is left to be looked at, but whether left and right were swapped.
void CouplingPanel::showPhotos(std::vector<PhotoCover::Shown> photos)
{
    if (m_sheet.stop && !m_sheet.isSwapAsked)
        photos.clear();
    m_photos = std::move(photos);
    const auto whole =
        std::ranges::find_if(m_photos, [](const PhotoCover::Shown& one) { return !one.picture.isNull(); });
    if (whole == m_photos.end()) {
        m_photos.clear();
        return m_head->showPhoto({}, {}, {});
    }
    const QString key = PhotoWords::keyPhoto();
    m_head->showPhoto(whole->picture,
                      m_photos.size() > 1 ? PhotoWords::bothSides(key) : PhotoWords::lockedHere(key),
                      PhotoWords::enlarge(whole->caption));
}

// What is enlarged never hides a stop.
bool CouplingPanel::enlarge()
{
    if (m_photos.empty())
        return false;
    if (m_sheet.stop)
        m_scroll->bringIntoView(m_stop);
    new PhotoCover{*this, m_photos, PhotoWords::keyPhoto(), m_look, m_sheet.stop ? m_stop : nullptr};
    return true;
}

void CouplingPanel::bringIntoSight()
{
    if (!m_sheet.flow.begun)
        m_scroll->scrollTo(0); // where to look comes first
    else if (VerdictCard* verdict = m_gap->verdict())
        m_scroll->bringIntoView(verdict);
    m_scroll->bringIntoView(nextThing());
    // What a reading says is read before anything else is done: at large text there is not room for both.
    if (m_isVerdictNew && m_gap->verdict())
        m_scroll->bringHeadIntoView(m_gap->verdict());
}

QWidget* CouplingPanel::nextThing() const
{
    const CouplingFlow& flow = m_sheet.flow;
    QWidget* leaves = m_gap->isMeasuring() ? m_gap->leaves() : nullptr;
    if (m_sheet.stop)
        return leaves ? leaves : m_stop;
    if (flow.next == Step::Look)
        return m_questions->tile(flow.ask.value_or(flow.asks.look.front()));
    if (leaves)
        return leaves;
    if (flow.isDone() && flow.ask)
        return m_questions->tile(*flow.ask);
    if (flow.next == Step::Secure)
        return m_questions->tile(CheckKind::Secured);
    if (flow.next == Step::Pull && flow.asks.parts.pull)
        return m_questions->tile(CheckKind::Pull);
    if (hasGapHere() && !m_sheet.readings.empty() && m_gap->verdict())
        return m_gap->verdict();
    return m_questions->tile(flow.asks.parts.pull ? CheckKind::Pull : flow.asks.look.back());
}

// Whoever comes back to the joint meets it again. What the other person found is not told by it.
void CouplingPanel::showStop(const RiggedTodayView& view)
{
    if (m_sheet.stop) {
        QStringList then;
        if (!m_sheet.stoppedSince)
            then << StopWords::tagAndPhotograph();
        if (isStoppedByAnAnswer())
            then << StopWords::slipOfTheKey();
        m_stop->say(whyStopped(m_sheet), stopAdvice(view, then.join(QLatin1Char(' '))));
    }
    m_stop->setVisible(m_sheet.stop.has_value());
}

// What comes before anything else here, or what is to be known while it is done.
QString CouplingPanel::firstThing() const
{
    if (m_sheet.stop)
        return {};
    const bool isFirst = m_sheet.turn == Turn::First;
    if (!m_sheet.person && isFirst)
        return behindWhatWentBefore(hasGapHere() ? RiggedWords::choosePersonFirst()
                                                 : RiggedWords::chooseWhoLooksFirst());
    if (!m_sheet.person)
        return behindWhatWentBefore(m_sheet.isNobodyApart ? ConnectedWords::nobodyApart()
                                                          : ConnectedWords::chooseSecond());
    if (const auto notSeen = m_sheet.flow.notSeen())
        return RiggedWords::notSeenHere(*notSeen);
    const CouplingFlow& flow = m_sheet.flow;
    if (flow.interrupted && flow.last && flow.readings.empty())
        return RiggedWords::keptFromBefore(Formats{}.interval(flow.last->interval));
    const QString before = whatWentBefore();
    if (isFirst)
        return before;
    if (m_sheet.hasConnectedIt)
        return ConnectedWords::connectedItToo(m_head->person());
    if (!m_sheet.isHidden)
        return before;
    return behindWhatWentBefore(m_sheet.flow.asks.parts.pull ? RiggedWords::secondBlind()
                                                             : RiggedWords::secondLooksBlind());
}

QString CouplingPanel::behindWhatWentBefore(const QString& sentence) const
{
    const QString before = whatWentBefore();
    return before.isEmpty() ? sentence : before + QLatin1Char(' ') + sentence;
}

QString CouplingPanel::whatWentBefore() const
{
    if (m_sheet.isBegunElsewhere)
        return !m_isFromPaper ? RiggedWords::halfDoneElsewhere()
                              : RiggedWords::halfAnsweredForAnother(m_head->person());
    return m_sheet.flow.interrupted && !m_sheet.flow.begun ? RiggedWords::interruptedHere() : QString{};
}

void CouplingPanel::showPlays(const RiggedTodayView& view)
{
    QStringList plays;
    for (const JointPlay& play : m_sheet.plays)
        plays << JointPlayWords::sentence(
            play, QString::fromStdString(nameIn(view.persons, std::optional{play.person})));
    if (!plays.isEmpty())
        plays << JointPlayWords::manualHasTheLimit();
    sayIn(m_plays, plays.join(QLatin1Char(' ')));
}

void CouplingPanel::showReading(const GaugeReading& reading, const std::optional<Judgement>& judgement)
{
    m_isVerdictNew = true;
    m_gap->showReading(reading, judgement);
    // The pull opens with the reading: whoever presses it at once waits for the save, and is not left out.
    // After an outside one nothing follows.
    m_questions->openPull(judgement && judgement->verdict != Verdict::Outside && !m_sheet.stop);
    if (judgement && isToBeReadFirst(judgement->verdict))
        emit restIsLost();
}

void CouplingPanel::showNotSaved()
{
    m_gap->showNotSaved();
    m_questions->showPull(m_sheet); // it opened with the reading that is not there
}

void CouplingPanel::showMovement(const QString& sentence)
{
    m_sheet.movement = sentence;
    m_gap->showMovement(sentence);
}

void CouplingPanel::showNotice(const QString& sentence)
{
    sayIn(m_notice, sentence);
}

bool CouplingPanel::closePlay()
{
    return m_playCard->close();
}

bool CouplingPanel::clearFigure()
{
    return m_gap->clearFigure();
}

bool CouplingPanel::takeAnswer(Answer answer)
{
    const auto& asked = m_sheet.flow.ask;
    if (!m_sheet.mayAnswer() || !asked || !isAnswerTo(*asked, answer))
        return false;
    emit answered(*asked, answer);
    return true;
}

bool CouplingPanel::isStoppedByAnAnswer() const
{
    return m_sheet.stop && m_sheet.stop->saidNo && !m_sheet.stoppedSince;
}

// A “no” is not taken back where it was pressed: it stops until a named person has said what it was.
bool CouplingPanel::tellsOfASlip(const QKeyEvent& event)
{
    if (!isStoppedByAnAnswer() || !isKey(event, RiggedWords::keyCorrect()))
        return false;
    showNotice(StopWords::slipOfTheKey());
    return true;
}

bool CouplingPanel::takeKey(QKeyEvent* event)
{
    if (m_gap->takeFigureKey(event))
        return true;
    if (m_head->takeKey(*event))
        return true;
    if (const auto answer = answerBy(*event))
        return takeAnswer(*answer);
    if (m_buttons->takeReadingKey(*event) || tellsOfASlip(*event))
        return true;
    if (isKey(*event, PhotoWords::keyPhoto()) && enlarge())
        return true;
    if (isKey(*event, RiggedWords::keyLook()) && m_questions->toggleLook())
        return true;
    if (m_gap->takeMoreKey(*event) || m_buttons->takeOtherKey(*event) || m_gap->takeKey(event))
        return true;
    if (!hasGapHere() && LeafRow::beginsFigure(*event))
        return showNotice(RiggedWords::noGapHere()), true;
    return isEnter(*event) && (holdsForTheStop() || goOn());
}

// What was typed behind an Enter that leaves a stop was meant for the joint that is left.
bool CouplingPanel::goOn()
{
    const bool wasStopped = m_sheet.stop.has_value();
    if (!m_buttons->goOn())
        return false;
    if (wasStopped)
        emit restIsLost();
    return true;
}

// One that was pressed before the stop card came, or with it, does not take the card away unread.
bool CouplingPanel::holdsForTheStop()
{
    if (!m_sheet.stop || m_isStopRead)
        return false;
    m_isStopRead = true;
    showNotice(RiggedWords::readTheStopFirst());
    return true;
}

} // namespace rig
