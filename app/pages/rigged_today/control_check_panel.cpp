#include "app/pages/rigged_today/control_check_panel.h"

#include "app/pages/page.h"
#include "app/pages/rigged_today/answer_key.h"
#include "app/pages/rigged_today/figure_section.h"
#include "app/pages/rigged_today/labelled_choice.h"
#include "app/pages/rigged_today/rigging_notices.h"
#include "app/pages/rigged_today/stop_card.h"
#include "app/pages/rigged_today/surface_chips.h"
#include "app/widgets/announcer.h"
#include "app/widgets/beside_or_below.h"
#include "app/widgets/choice_tile.h"
#include "app/widgets/flow_scroll.h"
#include "app/widgets/parts.h"
#include "app/widgets/person_note.h"
#include "app/widgets/whole_line.h"
#include "app/widgets/wrap_layout.h"
#include "app/wording/control_words.h"
#include "app/wording/record_words.h"
#include "app/wording/rigged_words.h"
#include "app/wording/stop_words.h"
#include "app/wording/surface_words.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QScrollBar>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

namespace rig {

namespace {

// Which tile stands before which; a surface shows those of its kind.
constexpr std::array kTileOrder{
    SurfaceCheckKind::HeldOneWay,     SurfaceCheckKind::HeldOtherWay,  SurfaceCheckKind::CalledOneWay,
    SurfaceCheckKind::CalledOtherWay, SurfaceCheckKind::Sense,         SurfaceCheckKind::FullTravel,
    SurfaceCheckKind::Neutral,        SurfaceCheckKind::LocksEvenly,   SurfaceCheckKind::EveryNotch,
    SurfaceCheckKind::HoldsSetting,   SurfaceCheckKind::OpensTogether, SurfaceCheckKind::FreePlay,
    SurfaceCheckKind::Freedom};

constexpr std::array kWays{SurfaceCheckKind::CalledOneWay, SurfaceCheckKind::CalledOtherWay};

std::size_t placeOf(SurfaceCheckKind way)
{
    return way == SurfaceCheckKind::CalledOneWay ? 0 : 1;
}

// Those that the arrow stands for; a surface has one of them at most.
bool isArrowFor(Movement movement, int key)
{
    switch (movement) {
    case Movement::Up:
    case Movement::Out:
    case Movement::Opens:
        return key == Qt::Key_Up;
    case Movement::Down:
    case Movement::In:
    case Movement::Shuts:
        return key == Qt::Key_Down;
    case Movement::Left:
        return key == Qt::Key_Left;
    case Movement::Right:
        return key == Qt::Key_Right;
    case Movement::Nothing:
        break;
    }
    return false;
}

} // namespace

ControlCheckPanel::ControlCheckPanel(Records& records, const Clock& clock, QWidget* parent)
    : QWidget{parent}, m_presenter{records, clock}
{
    auto* whole = new QVBoxLayout{this};
    whole->setContentsMargins(0, 0, 0, 0);
    whole->setSpacing(0);
    auto* inside = new QWidget;
    auto* both = new QVBoxLayout{inside};
    both->setContentsMargins(20, 12, 20, 8);
    m_none = buildNone();
    m_check = new QWidget;
    auto* layout = new QVBoxLayout{m_check};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(8);
    both->addWidget(m_none);
    both->addWidget(m_check);
    both->addStretch(1);
    buildTop(layout);
    buildTiles(layout);
    m_figures = new FigureSection;
    layout->addWidget(m_figures);
    connect(m_figures, &FigureSection::typed, this, &ControlCheckPanel::keep);
    connect(m_figures, &FigureSection::unitChosen, this, &ControlCheckPanel::showSheet);
    connect(m_figures, &FigureSection::lineOpened, this,
            [this](MeasureKind kind) { m_scroll->ensureWidgetVisible(m_figures->placeOf(kind), 0, 12); });
    m_scroll = new FlowScroll{inside};
    whole->addWidget(m_scroll, 1);
    auto* rule = new QFrame;
    rule->setProperty("rule", true);
    whole->addWidget(rule);
    buildBottom(whole);
}

QWidget* ControlCheckPanel::buildNone()
{
    auto* none = new QWidget;
    auto* layout = new QVBoxLayout{none};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(10);
    layout->addWidget(labelOf(ControlWords::place(), "title"));
    layout->addWidget(labelOf(ControlWords::noSurfaces(), "body", "noSurfaces"));
    layout->addWidget(labelOf(SurfaceWords::usualMeaning(), "soft"));
    m_usual = buttonOf(ControlWords::addUsual(), "addUsualSurfaces", "primary");
    layout->addWidget(m_usual, 0, Qt::AlignLeft);
    layout->addWidget(labelOf(ControlWords::addOwn(), "soft"));
    connect(m_usual, &QPushButton::clicked, this, &ControlCheckPanel::addUsual);
    return none;
}

void ControlCheckPanel::buildTop(QVBoxLayout* layout)
{
    auto* place = new QWidget;
    auto* names = new QVBoxLayout{place};
    names->setContentsMargins(0, 0, 0, 0);
    names->setSpacing(2);
    names->addWidget(labelOf(ControlWords::place(), "label"));
    m_title = labelOf({}, "title", "surfaceTitle");
    names->addWidget(m_title);
    auto* two = new QWidget;
    auto* top = new QHBoxLayout{two};
    top->setContentsMargins(0, 0, 0, 0);
    const LabelledChoice atSurface = addLabelledChoice(top, ControlWords::atSurface(), "atSurface");
    const LabelledChoice inCockpit = addLabelledChoice(top, ControlWords::inCockpit(), "inCockpit");
    atSurface.label->setText(RiggedWords::withKey(ControlWords::atSurface(), ControlWords::keyAtSurface()));
    inCockpit.label->setText(RiggedWords::withKey(ControlWords::inCockpit(), ControlWords::keyInCockpit()));
    m_atSurface = atSurface.box;
    m_inCockpit = inCockpit.box;
    for (ChoiceBox* box : {m_atSurface, m_inCockpit})
        connect(box, &QComboBox::activated, this, [this] {
            emit peopleChosen({m_atSurface->chosen<PersonId>(), m_inCockpit->chosen<PersonId>()});
        });
    layout->addWidget(new BesideOrBelow{place, two});
    m_atSurfaceStands = new PersonNote{"atSurfaceStanding"};
    m_inCockpitStands = new PersonNote{"inCockpitStanding"};
    auto* stand = new WrapLayout{14, false};
    stand->addWidget(m_atSurfaceStands);
    stand->addWidget(m_inCockpitStands);
    layout->addLayout(stand);
    m_chips = new SurfaceChips;
    connect(m_chips, &SurfaceChips::chosen, this, &ControlCheckPanel::surfaceChosen);
    layout->addWidget(m_chips);
    m_notice = labelOf({}, "caution", "controlNotice");
    layout->addWidget(m_notice);
    m_stop = new StopCard;
    layout->addWidget(m_stop);
    auto* call = new QFrame;
    call->setProperty("card", true);
    auto* words = new QVBoxLayout{call};
    words->setContentsMargins(16, 8, 16, 10);
    words->setSpacing(2);
    m_callHeading = labelOf({}, "label", "senseHeading");
    words->addWidget(m_callHeading);
    m_call = labelOf({}, "title", "senseCall");
    words->addWidget(m_call);
    layout->addWidget(call);
    m_callCard = call;
}

void ControlCheckPanel::buildTiles(QVBoxLayout* layout)
{
    auto* row = new WrapLayout{10, true};
    for (const SurfaceCheckKind kind : kTileOrder) {
        if (isCall(kind)) {
            auto* call = new ChoiceTile{QStringLiteral("surfaceCall%1_").arg(placeOf(kind))};
            call->setObjectName(QStringLiteral("surfaceCall%1").arg(placeOf(kind)));
            connect(call, &ChoiceTile::pressed, this,
                    [this, kind](int option) { pressCall(kind, static_cast<std::size_t>(option)); });
            m_callTiles[placeOf(kind)] = call;
            row->addWidget(call);
            continue;
        }
        auto* tile = new QuestionTile{ControlWords::question(kind), ControlWords::hint(kind),
                                      AnswerChoice::OrCannotSee};
        tile->setObjectName(QStringLiteral("surfaceTile%1").arg(static_cast<int>(kind)));
        connect(tile, &QuestionTile::answered, this, [this, kind](Answer given) { answer(kind, given); });
        m_tiles[static_cast<std::size_t>(kind)] = tile;
        row->addWidget(tile);
    }
    layout->addLayout(row);
}

void ControlCheckPanel::buildBottom(QVBoxLayout* layout)
{
    auto* caution = labelOf(RecordWords::controlCaution(), "caution", "partSeatedCanPass");
    caution->setContentsMargins(20, 8, 20, 0);
    layout->addWidget(caution);
    auto* row = new WrapLayout{8, false};
    row->setContentsMargins(20, 6, 20, 10);
    m_keys = new WholeLine{ControlWords::keys(), "soft"};
    row->addWidget(m_keys);
    m_next = buttonOf({}, "nextSurface", "primary");
    row->addWidget(m_next);
    connect(m_next, &QPushButton::clicked, this, &ControlCheckPanel::onwardAsked);
    layout->addLayout(row);
}

void ControlCheckPanel::setLook(const Look& look)
{
    m_stop->setLook(look);
    m_atSurfaceStands->setLook(look);
    m_inCockpitStands->setLook(look);
    m_chips->setLook(look);
}

void ControlCheckPanel::display(const RiggedTodayView& view, const RiggingSession& session,
                                const QString& onward)
{
    const bool isElsewhere = m_session.surface != session.surface || m_session.record != session.record;
    m_view = view;
    m_session = session;
    m_onward = onward;
    const bool hasSurfaces = session.surface.has_value();
    m_none->setVisible(!hasSurfaces);
    m_check->setVisible(hasSurfaces);
    m_keys->setVisible(hasSurfaces);
    m_next->setVisible(hasSurfaces);
    if (!hasSurfaces)
        return;
    if (isElsewhere)
        beginSurface();
    showSheet();
    m_isStopRead = m_isStopRead && !isElsewhere && isStopped();
}

void ControlCheckPanel::beginSurface()
{
    m_lastMeasured = false;
    announce(*m_scroll, {}); // asked at the next surface in the same words, it is told as well
    const auto surface = std::ranges::find_if(
        m_view.surfaces, [this](const Surface& one) { return m_session.surface == one.id; });
    if (surface != m_view.surfaces.end())
        m_figures->begin(*surface);
}

void ControlCheckPanel::showSheet()
{
    auto sheet = m_presenter.sheet(m_view, *m_session.surface);
    if (!sheet) {
        emit problemArose(sheet.problem());
        return;
    }
    m_sheet = std::move(sheet).value();
    m_title->setText(QString::fromStdString(m_sheet.surface.name));
    setProperty(kIsAbout, m_title->text());
    showCall();
    m_chips->display(m_view.review.surfaces, *m_session.surface,
                     [this](const SurfaceProgress& one) { return isLeftAlone(one); });
    showPeople();
    showTiles();
    m_keys->setText(m_sheet.asked() && isCall(*m_sheet.asked()) ? ControlWords::callKeys()
                                                                : ControlWords::keys());
    m_figures->display(m_sheet, mayTry() && !isStopped());
    m_figures->setVisible(!isStopped() || m_sheet.measured.isAny());
    m_keys->setVisible(!isStopped());
    m_next->setText(nextSurface(m_session, *m_view.now) ? ControlWords::next() : m_onward);
    m_next->setEnabled(!m_sheet.asked() && !m_sheet.reversed);
    m_next->setVisible(!m_sheet.reversed); // nothing is tried on any
    announce(*this, m_title->text());
    announce(*m_scroll, whatIsAsked());
    // After the layout has settled: the next thing to do may lie below the edge.
    QTimer::singleShot(0, m_scroll, [this] { bringIntoSight(); });
}

// The next thing to try, as whoever listens is asked for it.
QString ControlCheckPanel::whatIsAsked() const
{
    if (isStopped() || !mayTry() || !m_sheet.asked())
        return {};
    return isCall(*m_sheet.asked()) ? m_call->text() : ControlWords::question(*m_sheet.asked());
}

void ControlCheckPanel::bringIntoSight()
{
    constexpr int kAround = 12;
    if (m_lastMeasured)
        m_scroll->ensureWidgetVisible(m_figures, 0, kAround);
    else if (mayTry() && m_sheet.asked())
        m_scroll->ensureWidgetVisible(tileOf(*m_sheet.asked()), 0, kAround);
    else
        m_scroll->verticalScrollBar()->setValue(0); // the people, or why to stop
}

bool ControlCheckPanel::mayTry() const
{
    return m_session.checkPeople.areTwo();
}

// Nothing is tried on it any more.
bool ControlCheckPanel::isLeftAlone(const SurfaceProgress& one) const
{
    const auto& surfaces = m_view.now->surfaces;
    const auto now = std::ranges::find(surfaces, one.id, &SurfaceNow::id);
    const bool isOfAStoppedJoint = now != surfaces.end() && now->stoppedJoint;
    return one.stop || isOfAStoppedJoint || (m_sheet.reversed && one.next);
}

QString ControlCheckPanel::whyStopped() const
{
    QStringList why;
    if (m_sheet.reversed) {
        const QString name = QString::fromStdString(m_sheet.reversed->name);
        why << (m_sheet.didNothing ? ControlWords::didNothing(name) : ControlWords::reversed(name));
    }
    if (m_sheet.stoppedJoint && !m_sheet.isOwn())
        why << StopWords::jointFirst(QString::fromStdString(m_sheet.stoppedJoint->name), m_title->text());
    if (m_sheet.stoppedJoint && !m_sheet.reversed)
        why << StopWords::othersCanBeTried();
    if (why.isEmpty())
        why << ControlWords::saidNo(m_title->text(), *m_sheet.progress.stop);
    return why.join(QLatin1Char('\n'));
}

void ControlCheckPanel::showPeople()
{
    for (ChoiceBox* box : {m_atSurface, m_inCockpit})
        box->fill(RiggedWords::choosePerson(), m_view.persons);
    m_atSurface->choose(m_session.checkPeople.atSurface);
    m_inCockpit->choose(m_session.checkPeople.inCockpit);
    const CheckPeople& people = m_session.checkPeople;
    m_atSurfaceStands->show(standingOf(m_view, people.atSurface), m_atSurface->currentText());
    const bool isSame = people.inCockpit == people.atSurface; // said once
    m_inCockpitStands->show(isSame ? std::nullopt : standingOf(m_view, people.inCockpit),
                            m_inCockpit->currentText());
    const bool stops = isStopped();
    if (stops)
        m_stop->say(whyStopped(),
                    stopAdvice(m_view, m_sheet.reversed ? ControlWords::afterTheStop() : QString{}));
    m_stop->setVisible(stops);
    if (m_sheet.reversed)
        sayIn(m_notice, {}); // nobody is to stand anywhere
    else if (!m_session.checkPeople.areTwo())
        sayIn(m_notice, m_session.checkPeople.atSurface && m_session.checkPeople.inCockpit
                            ? ControlWords::samePerson()
                            : ControlWords::choosePeople());
    else
        sayIn(m_notice, stops                    ? QString{}
                        : m_sheet.progress.doubt ? ControlWords::cannotSeeHere()
                        : m_sheet.progress.setBackBy
                            ? ControlWords::setBackHere(QString::fromStdString(*m_sheet.progress.setBackBy))
                            : QString{});
}

// Before it is called the card says what to move, and nothing of what should come of it.
void ControlCheckPanel::showCall()
{
    const Surface& surface = m_sheet.surface;
    const SurfaceProgress& progress = m_sheet.progress;
    const bool isStopped = progress.stop && isCall(*progress.stop);
    m_callCard->setVisible(!m_sheet.isLeftAlone() ||
                           m_sheet.isOwn()); // it gives an order, or says what was seen
    if (progress.isSenseAnsweredPlainly()) {
        m_callHeading->setText(ControlWords::calledAloud());
        m_call->setText(SurfaceWords::call(surface));
        return;
    }
    if (!progress.isCalledBothWays() && !isStopped) {
        const bool isOther = progress.answers.contains(SurfaceCheckKind::CalledOneWay);
        m_callHeading->setText(ControlWords::tellCockpit());
        m_call->setText(ControlWords::command(surface.kind, isOther ? SurfaceCheckKind::CalledOtherWay
                                                                    : SurfaceCheckKind::CalledOneWay));
        return;
    }
    const ExpectedCalls expected = expectedOf(surface);
    QStringList lines;
    for (const SurfaceCheckKind way : kWays) {
        if (!progress.answers.contains(way))
            continue;
        const QString command = ControlWords::command(surface.kind, way);
        const auto seen = progress.seen.find(way);
        const QString what = seen == progress.seen.end() ? RiggedWords::answer(Answer::CannotSee)
                                                         : ControlWords::movement(seen->second);
        lines << (expected.of(way) ? ControlWords::calledBesideExpected(
                                         command, what, ControlWords::movement(*expected.of(way)))
                                   : ControlWords::called(command, what));
    }
    if (!expected.areKnown())
        lines << ControlWords::expected(SurfaceWords::call(surface));
    m_callHeading->setText(ControlWords::besideExpected());
    m_call->setText(lines.join(QLatin1Char('\n')));
}

bool ControlCheckPanel::isShown(SurfaceCheckKind kind) const
{
    if (m_sheet.isLeftAlone() && !m_sheet.progress.answers.contains(kind))
        return false;
    if (isOfSense(kind) && m_sheet.progress.isSenseAnsweredPlainly())
        return kind == SurfaceCheckKind::Sense;
    return std::ranges::count(checksOf(m_sheet.surface), kind) > 0;
}

// Whether it should do what it did is answered when it has been called.
bool ControlCheckPanel::isOpen(SurfaceCheckKind kind) const
{
    const SurfaceProgress& progress = m_sheet.progress;
    return mayTry() && !m_sheet.isStopped() &&
           (kind != SurfaceCheckKind::Sense || progress.isCalledBothWays() ||
            progress.isSenseAnsweredPlainly());
}

QWidget* ControlCheckPanel::tileOf(SurfaceCheckKind kind) const
{
    if (isCall(kind))
        return m_callTiles[placeOf(kind)];
    return m_tiles[static_cast<std::size_t>(kind)];
}

void ControlCheckPanel::showTiles()
{
    for (const SurfaceCheckKind kind : kTileOrder) {
        tileOf(kind)->setVisible(isShown(kind));
        if (isCall(kind))
            continue;
        QuestionTile* tile = m_tiles[static_cast<std::size_t>(kind)];
        const auto answer = m_sheet.progress.answers.find(kind);
        tile->setAnswer(answer == m_sheet.progress.answers.end() ? std::nullopt
                                                                 : std::optional{answer->second});
        tile->setState(isOpen(kind) && m_sheet.asked() == kind, isOpen(kind));
    }
    for (const SurfaceCheckKind way : kWays)
        showCallTile(way);
}

void ControlCheckPanel::showCallTile(SurfaceCheckKind way)
{
    const SurfaceProgress& progress = m_sheet.progress;
    const QString title = ControlWords::whatItDoes(ControlWords::command(m_sheet.surface.kind, way));
    const auto answer = progress.answers.find(way);
    const auto seen = progress.seen.find(way);
    const bool isDoubt = answer != progress.answers.end() && !countsAsYes(answer->second);
    std::vector<ChoiceTile::Option> options;
    for (const Movement movement : movementsOf(m_sheet.surface.kind)) {
        const bool isChosen = seen != progress.seen.end() && seen->second == movement;
        options.push_back({ControlWords::movementWithKey(movement),
                           ControlWords::spoken(title, ControlWords::movement(movement)), isChosen,
                           isChosen && isDoubt});
    }
    const bool isUnseen = answer != progress.answers.end() && answer->second == Answer::CannotSee;
    options.push_back({RiggedWords::answerWithKey(Answer::CannotSee),
                       ControlWords::spoken(title, RiggedWords::answer(Answer::CannotSee)), isUnseen,
                       isUnseen});
    ChoiceTile* tile = m_callTiles[placeOf(way)];
    tile->display(title, ControlWords::sayThenPress(), options);
    tile->setAsked(isOpen(way) && m_sheet.asked() == way);
    tile->setOpen(isOpen(way));
}

void ControlCheckPanel::answer(SurfaceCheckKind kind, Answer given)
{
    if (!isOpen(kind))
        return;
    m_lastMeasured = false;
    emit answered(kind, given);
}

// The last option is that it could not be seen.
void ControlCheckPanel::pressCall(SurfaceCheckKind way, std::size_t option)
{
    if (!isOpen(way))
        return;
    m_lastMeasured = false;
    const auto movements = movementsOf(m_sheet.surface.kind);
    emit called({way, option < movements.size() ? std::optional{movements[option]} : std::nullopt});
}

bool ControlCheckPanel::takeCall(const QKeyEvent& event, SurfaceCheckKind way)
{
    const auto movements = movementsOf(m_sheet.surface.kind);
    const auto isMeant = [&event](Movement movement) {
        if (movement == Movement::Nothing)
            return isKey(event, ControlWords::keyNothing());
        return !(event.modifiers() & ~Qt::KeypadModifier) && isArrowFor(movement, event.key());
    };
    const auto meant = std::ranges::find_if(movements, isMeant);
    if (meant == movements.end() && !isKey(event, RiggedWords::keyCannotSee()))
        return false;
    pressCall(way, static_cast<std::size_t>(meant - movements.begin()));
    return true;
}

void ControlCheckPanel::keep(MeasureKind kind, DeflectionUnit unit, const QString& typed)
{
    if (!mayTry() || isStopped() || !m_mayWrite())
        return;
    const auto refusal = m_presenter.keep(m_view.record->id, m_sheet.surface, kind, unit, typed,
                                          *m_session.checkPeople.atSurface);
    if (!refusal) {
        emit problemArose(refusal.problem());
        return;
    }
    if (!refusal.value().isEmpty())
        return m_figures->refuse(kind, refusal.value());
    m_figures->taken(kind);
    m_lastMeasured = true;
    emit changed();
}

void ControlCheckPanel::addUsual()
{
    if (!m_mayWrite())
        return;
    const Outcome added = m_presenter.addUsualSurfaces(m_view.airframe.id, m_session.checkPeople.atSurface);
    if (!added)
        emit problemArose(added.problem());
    emit changed();
}

bool ControlCheckPanel::takeKey(QKeyEvent* event)
{
    const bool enter = isEnter(*event);
    if (!m_session.surface)
        return enter ? (m_usual->click(), true) : false;
    if (takeChooserKey(*event))
        return true;
    const bool isCalled = mayTry() && m_sheet.asked() && isCall(*m_sheet.asked());
    if (isCalled && takeCall(*event, *m_sheet.asked()))
        return true;
    const auto given = answerBy(*event);
    if (given && *given != Answer::Felt) {
        if (!mayTry() || !m_sheet.asked() || isCalled)
            return false;
        answer(*m_sheet.asked(), *given);
        return true;
    }
    if (!isStopped() && m_figures->takeKey(*event))
        return true;
    if (enter && holdsForTheStop())
        return true;
    if (enter && m_next->isEnabled())
        return m_next->click(), true;
    return false;
}

bool ControlCheckPanel::takeChooserKey(const QKeyEvent& event)
{
    if (isKey(event, ControlWords::keyAtSurface()))
        return openChoice(m_atSurface);
    if (isKey(event, ControlWords::keyInCockpit()))
        return openChoice(m_inCockpit);
    return opensByEnter(event, m_atSurface) || opensByEnter(event, m_inCockpit);
}

// As at a joint: Enter that was meant for something else does not take the card away unread.
bool ControlCheckPanel::holdsForTheStop()
{
    if (!isStopped() || m_isStopRead)
        return false;
    m_isStopRead = true;
    if (m_next->isEnabled())
        sayIn(m_notice, ControlWords::readTheStopFirst());
    return true;
}

} // namespace rig
