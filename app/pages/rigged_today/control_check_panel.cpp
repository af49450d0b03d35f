#include "app/pages/rigged_today/control_check_panel.h"

#include "app/pages/rigged_today/figure_section.h"
#include "app/pages/rigged_today/stop_card.h"
#include "app/pages/rigged_today/surface_chips.h"
#include "app/widgets/choice_box.h"
#include "app/widgets/flow_scroll.h"
#include "app/widgets/parts.h"
#include "app/widgets/wrap_layout.h"
#include "app/wording/control_words.h"
#include "app/wording/rigged_words.h"
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
    SurfaceCheckKind::HeldOneWay, SurfaceCheckKind::HeldOtherWay, SurfaceCheckKind::Sense,
    SurfaceCheckKind::FullTravel, SurfaceCheckKind::Neutral,      SurfaceCheckKind::LocksEvenly,
    SurfaceCheckKind::EveryNotch, SurfaceCheckKind::HoldsSetting, SurfaceCheckKind::OpensTogether,
    SurfaceCheckKind::FreePlay,   SurfaceCheckKind::Freedom};

bool isAmong(SurfaceCheckKind kind, SurfaceKind surface)
{
    return std::ranges::find(checksOf(surface), kind) != checksOf(surface).end();
}

std::optional<Answer> answerFor(const QKeyEvent& event)
{
    if (isKey(event, RiggedWords::keyYes()))
        return Answer::Yes;
    if (isKey(event, RiggedWords::keyNo()))
        return Answer::No;
    if (isKey(event, RiggedWords::keyCannotSee()))
        return Answer::CannotSee;
    return std::nullopt;
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
    auto* top = new QHBoxLayout;
    auto* names = new QVBoxLayout;
    names->setSpacing(2);
    names->addWidget(labelOf(ControlWords::place(), "label"));
    m_title = labelOf({}, "title", "surfaceTitle");
    names->addWidget(m_title);
    top->addLayout(names, 1);
    const auto choice = [this, top](ChoiceBox*& box, const QString& text, const char* name) {
        auto* column = new QVBoxLayout;
        column->setSpacing(2);
        auto* label = new QLabel{text};
        label->setProperty("kind", "label");
        box = new ChoiceBox{text};
        box->setObjectName(QLatin1String(name));
        label->setBuddy(box);
        column->addWidget(label);
        column->addWidget(box);
        column->addStretch(1);
        top->addLayout(column);
        connect(box, &QComboBox::activated, this, [this] {
            emit peopleChosen({m_atSurface->chosen<PersonId>(), m_inCockpit->chosen<PersonId>()});
        });
    };
    choice(m_atSurface, ControlWords::atSurface(), "atSurface");
    choice(m_inCockpit, ControlWords::inCockpit(), "inCockpit");
    layout->addLayout(top);
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
    words->addWidget(labelOf(ControlWords::callAloud(), "label"));
    m_call = labelOf({}, "title", "senseCall");
    words->addWidget(m_call);
    layout->addWidget(call);
}

void ControlCheckPanel::buildTiles(QVBoxLayout* layout)
{
    auto* row = new WrapLayout{10, true};
    for (const SurfaceCheckKind kind : kTileOrder) {
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
    auto* caution = labelOf(ControlWords::partSeatedCanPass(), "caution", "partSeatedCanPass");
    caution->setContentsMargins(20, 8, 20, 0);
    layout->addWidget(caution);
    auto* row = new WrapLayout{8, false};
    row->setContentsMargins(20, 6, 20, 10);
    m_keys = labelOf(ControlWords::keys(), "soft");
    m_keys->setWordWrap(false);
    row->addWidget(m_keys);
    m_next = buttonOf({}, "nextSurface", "primary");
    row->addWidget(m_next);
    connect(m_next, &QPushButton::clicked, this, &ControlCheckPanel::onwardAsked);
    layout->addLayout(row);
}

void ControlCheckPanel::setLook(const Look& look)
{
    m_stop->setLook(look);
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
}

void ControlCheckPanel::beginSurface()
{
    m_lastMeasured = false;
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
    m_call->setText(SurfaceWords::call(m_sheet.surface));
    m_chips->display(m_view.review.surfaces, *m_session.surface);
    showPeople();
    showTiles();
    m_figures->display(m_sheet, mayTry());
    m_next->setText(nextSurface(m_session, *m_view.now) ? ControlWords::next() : m_onward);
    m_next->setEnabled(!m_sheet.asked() && !m_sheet.reversed);
    // After the layout has settled: the next thing to do may lie below the edge.
    QTimer::singleShot(0, m_scroll, [this] { bringIntoSight(); });
}

void ControlCheckPanel::bringIntoSight()
{
    constexpr int kAround = 12;
    if (m_lastMeasured)
        m_scroll->ensureWidgetVisible(m_figures, 0, kAround);
    else if (mayTry() && m_sheet.asked())
        m_scroll->ensureWidgetVisible(m_tiles[static_cast<std::size_t>(*m_sheet.asked())], 0, kAround);
    else
        m_scroll->verticalScrollBar()->setValue(0); // the people, or why to stop
}

bool ControlCheckPanel::mayTry() const
{
    return m_session.checkPeople.areTwo();
}

void ControlCheckPanel::showPeople()
{
    for (ChoiceBox* box : {m_atSurface, m_inCockpit})
        box->fill(RiggedWords::choosePerson(), m_view.persons);
    m_atSurface->choose(m_session.checkPeople.atSurface);
    m_inCockpit->choose(m_session.checkPeople.inCockpit);
    const QString callName = QString::fromStdString(m_view.airframe.callName);
    const QString callPhone = QString::fromStdString(m_view.airframe.callPhone);
    const bool stops = m_sheet.stop || m_sheet.reversed;
    if (m_sheet.reversed)
        m_stop->say(ControlWords::reversed(QString::fromStdString(m_sheet.reversed->name)),
                    ControlWords::leaveAndCall(callName, callPhone));
    else if (m_sheet.stop)
        m_stop->say(ControlWords::saidNo(m_title->text(), *m_sheet.stop),
                    ControlWords::leaveAndCall(callName, callPhone));
    m_stop->setVisible(stops);
    if (!m_session.checkPeople.areTwo())
        sayIn(m_notice, m_session.checkPeople.atSurface && m_session.checkPeople.inCockpit
                            ? ControlWords::samePerson()
                            : ControlWords::choosePeople());
    else
        sayIn(m_notice, stops                      ? QString{}
                        : m_sheet.progress.doubted ? ControlWords::cannotSeeHere()
                        : m_sheet.progress.setBackBy
                            ? ControlWords::setBackHere(QString::fromStdString(*m_sheet.progress.setBackBy))
                            : QString{});
}

void ControlCheckPanel::showTiles()
{
    const bool open = mayTry() && !m_sheet.stop && !m_sheet.reversed;
    for (const SurfaceCheckKind kind : kTileOrder) {
        QuestionTile* tile = m_tiles[static_cast<std::size_t>(kind)];
        const auto answer = m_sheet.progress.answers.find(kind);
        tile->setVisible(isAmong(kind, m_sheet.surface.kind));
        tile->setAnswer(answer == m_sheet.progress.answers.end() ? std::nullopt
                                                                 : std::optional{answer->second});
        tile->setState(open && m_sheet.asked() == kind, open);
    }
}

void ControlCheckPanel::answer(SurfaceCheckKind kind, Answer given)
{
    if (!mayTry() || m_sheet.stop || m_sheet.reversed)
        return;
    m_lastMeasured = false;
    emit answered(kind, given);
}

void ControlCheckPanel::keep(MeasureKind kind, DeflectionUnit unit, const QString& typed)
{
    if (!mayTry())
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
    const Outcome added = m_presenter.addUsualSurfaces(m_view.airframe.id, m_session.checkPeople.atSurface);
    if (!added)
        emit problemArose(added.problem());
    emit changed();
}

bool ControlCheckPanel::takeKey(QKeyEvent* event)
{
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (!m_session.surface)
        return enter ? (m_usual->click(), true) : false;
    if (const auto given = answerFor(*event)) {
        if (!mayTry() || !m_sheet.asked())
            return false;
        answer(*m_sheet.asked(), *given);
        return true;
    }
    if (m_figures->takeKey(*event))
        return true;
    if (enter && m_next->isEnabled())
        return m_next->click(), true;
    return false;
}

} // namespace rig
