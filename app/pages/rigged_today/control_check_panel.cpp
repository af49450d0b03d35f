#include "app/pages/rigged_today/control_check_panel.h"

#include "app/pages/rigged_today/measure_card.h"
#include "app/pages/rigged_today/stop_card.h"
#include "app/pages/rigged_today/surface_chips.h"
#include "app/widgets/choice_box.h"
#include "app/widgets/flow_scroll.h"
#include "app/widgets/parts.h"
#include "app/widgets/wrap_layout.h"
#include "app/wording/control_words.h"
#include "app/wording/rigged_words.h"
#include "app/wording/surface_words.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QKeyEvent>
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

constexpr std::array kMeasures{MeasureKind::FreePlay, MeasureKind::Up, MeasureKind::Down};

bool isAmong(SurfaceCheckKind kind, SurfaceKind surface)
{
    return std::ranges::find(checksOf(surface), kind) != checksOf(surface).end();
}

const std::optional<SurfaceMeasure>& measuredIn(const MeasuredSurface& measured, MeasureKind kind)
{
    switch (kind) {
    case MeasureKind::FreePlay:
        return measured.play;
    case MeasureKind::Up:
        return measured.up;
    case MeasureKind::Down:
        break;
    }
    return measured.down;
}

// Left against right of one kind of figure; empty where one of them lacks.
QString sidesOf(const SurfaceSheet& sheet, MeasureKind kind)
{
    if (!sheet.other)
        return {};
    const bool isLeft = sheet.surface.side == Side::Left;
    const auto& left = measuredIn(isLeft ? sheet.measured : sheet.other->measured, kind);
    const auto& right = measuredIn(isLeft ? sheet.other->measured : sheet.measured, kind);
    if (!left || !right)
        return {};
    const QString name = ControlWords::figureName(kind, sheet.surface.kind);
    const QString leftText = SurfaceWords::figure(left->value, left->unit);
    const QString rightText = SurfaceWords::figure(right->value, right->unit);
    const auto apart = differenceInDegrees(left, right);
    if (!apart)
        return ControlWords::leftAndRight(name, leftText, rightText);
    const Deflection size{std::abs(apart->thousandths)};
    return ControlWords::leftAndRightApart(name, leftText, rightText,
                                           SurfaceWords::workedOut(size, DeflectionUnit::Degrees));
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
    buildFigures(layout);
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
        connect(box, &QComboBox::activated, this, &ControlCheckPanel::choosePeople);
    };
    choice(m_atSurface, ControlWords::atSurface(), "atSurface");
    choice(m_inCockpit, ControlWords::inCockpit(), "inCockpit");
    layout->addLayout(top);
    m_chips = new SurfaceChips;
    connect(m_chips, &SurfaceChips::chosen, this, &ControlCheckPanel::go);
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
        auto* tile = new QuestionTile{ControlWords::question(kind), ControlWords::hint(kind), true};
        tile->setObjectName(QStringLiteral("surfaceTile%1").arg(static_cast<int>(kind)));
        connect(tile, &QuestionTile::answered, this, [this, kind](Answer given) { answer(kind, given); });
        m_tiles[static_cast<std::size_t>(kind)] = tile;
        row->addWidget(tile);
    }
    layout->addLayout(row);
}

void ControlCheckPanel::buildFigures(QVBoxLayout* layout)
{
    m_figures = new QWidget;
    auto* inside = new QVBoxLayout{m_figures};
    inside->setContentsMargins(0, 0, 0, 0);
    inside->setSpacing(6);
    auto* heading = new QHBoxLayout;
    heading->addWidget(labelOf(ControlWords::figures(), "label"), 1);
    auto* label = labelOf(ControlWords::unitOfUpAndDown(), "soft");
    label->setWordWrap(false);
    heading->addWidget(label);
    m_unit = new QComboBox;
    m_unit->setObjectName("deflectionUnit");
    m_unit->setAccessibleName(ControlWords::unitOfUpAndDown());
    for (const DeflectionUnit unit : {DeflectionUnit::Degrees, DeflectionUnit::Millimetres})
        m_unit->addItem(ControlWords::unitShort(unit));
    connect(m_unit, &QComboBox::activated, this, &ControlCheckPanel::showFigures);
    heading->addWidget(m_unit);
    inside->addLayout(heading);
    auto* row = new WrapLayout{10, true};
    constexpr std::array kNames{"measuredPlay", "measuredUp", "measuredDown"};
    for (const MeasureKind kind : kMeasures) {
        const auto at = static_cast<std::size_t>(kind);
        m_cards[at] = new MeasureCard{kNames[at]};
        connect(m_cards[at], &MeasureCard::typed, this,
                [this, kind](const QString& typed) { keep(kind, typed); });
        row->addWidget(m_cards[at]);
    }
    inside->addLayout(row);
    m_ratio = labelOf({}, "soft", "upOverDown");
    m_sides = labelOf({}, "soft", "leftAndRight");
    inside->addWidget(m_ratio);
    inside->addWidget(m_sides);
    layout->addWidget(m_figures);
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
    connect(m_next, &QPushButton::clicked, this, &ControlCheckPanel::next);
    layout->addLayout(row);
}

void ControlCheckPanel::setLook(const Look& look)
{
    m_stop->setLook(look);
}

void ControlCheckPanel::display(const RiggedTodayView& view, const QString& onward)
{
    m_view = view;
    m_onward = onward;
    if (m_record != view.record->id) {
        m_record = view.record->id;
        m_people = {};
        m_current = {};
    }
    m_none->setVisible(view.surfaces.empty());
    m_check->setVisible(!view.surfaces.empty());
    m_keys->setVisible(!view.surfaces.empty());
    m_next->setVisible(!view.surfaces.empty());
    if (view.surfaces.empty())
        return;
    chooseCurrent();
    showSheet();
}

void ControlCheckPanel::chooseCurrent()
{
    const auto& all = m_view.review.surfaces;
    if (std::ranges::find(all, m_current, &SurfaceProgress::id) != all.end())
        return;
    const auto waiting =
        std::ranges::find_if(all, [](const SurfaceProgress& one) { return one.next.has_value(); });
    m_current = waiting == all.end() ? all.front().id : waiting->id;
    for (MeasureCard* one : m_cards)
        one->clear();
    const auto surface = std::ranges::find(m_view.surfaces, m_current, &Surface::id);
    m_unit->setCurrentIndex(static_cast<int>(surface->unit));
}

void ControlCheckPanel::showSheet()
{
    auto sheet = m_presenter.sheet(m_view, m_current);
    if (!sheet) {
        emit problemArose(sheet.problem());
        return;
    }
    m_sheet = std::move(sheet).value();
    m_title->setText(QString::fromStdString(m_sheet.surface.name));
    m_call->setText(SurfaceWords::call(m_sheet.surface));
    m_chips->display(m_view.review.surfaces, m_current);
    showPeople();
    showTiles();
    showFigures();
    m_next->setText(nextWaiting() ? ControlWords::next() : m_onward);
    m_next->setEnabled(!m_sheet.asked());
    // After the layout has settled: at large text the next thing to do may lie below the edge.
    QTimer::singleShot(0, m_scroll, [this] { m_scroll->ensureWidgetVisible(nextThing(), 0, 12); });
}

QWidget* ControlCheckPanel::nextThing() const
{
    if (!mayTry() || m_sheet.stop || m_sheet.reversed || !m_sheet.asked())
        return m_title;
    return m_tiles[static_cast<std::size_t>(*m_sheet.asked())];
}

bool ControlCheckPanel::mayTry() const
{
    return m_people.areTwo();
}

void ControlCheckPanel::showPeople()
{
    for (ChoiceBox* box : {m_atSurface, m_inCockpit}) {
        box->begin(RiggedWords::choosePerson());
        for (const Person& person : m_view.persons)
            box->add(QString::fromStdString(person.name), person.id);
    }
    m_atSurface->choose(m_people.atSurface);
    m_inCockpit->choose(m_people.inCockpit);
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
    if (!m_people.areTwo())
        sayIn(m_notice, m_people.atSurface && m_people.inCockpit ? ControlWords::samePerson()
                                                                 : ControlWords::choosePeople());
    else
        sayIn(m_notice, m_sheet.progress.doubted && !stops ? ControlWords::cannotSeeHere() : QString{});
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

DeflectionUnit ControlCheckPanel::unitFor(MeasureKind kind) const
{
    // Free play is felt and read at the trailing edge.
    return kind == MeasureKind::FreePlay ? DeflectionUnit::Millimetres
                                         : static_cast<DeflectionUnit>(m_unit->currentIndex());
}

void ControlCheckPanel::showFigures()
{
    const Surface& surface = m_sheet.surface;
    m_figures->setVisible(isAmong(SurfaceCheckKind::FreePlay, surface.kind) || surface.up || surface.down ||
                          surface.mostPlay);
    for (const MeasureKind kind : kMeasures) {
        const auto& measured = measuredIn(m_sheet.measured, kind);
        card(kind)->setTitle(ControlWords::figureLabel(kind, surface.kind),
                             ControlWords::unitShort(unitFor(kind)));
        card(kind)->setOpen(mayTry());
        QStringList words;
        if (measured)
            words << ControlWords::measured(*measured) + QLatin1Char('.');
        words << (measured ? ControlWords::besideManual(surface, *measured)
                           : ControlWords::fromManual(surface, kind));
        words.removeAll(QString{});
        card(kind)->show(words);
    }
    const auto ratio = surface.kind == SurfaceKind::Aileron ? upOverDown(m_sheet.measured) : std::nullopt;
    sayIn(m_ratio, ratio ? ControlWords::ratio(*ratio) : QString{});
    QStringList sides;
    for (const MeasureKind kind : kMeasures)
        sides << sidesOf(m_sheet, kind);
    sides.removeAll(QString{});
    sayIn(m_sides, sides.join(QLatin1Char(' ')));
}

void ControlCheckPanel::answer(SurfaceCheckKind kind, Answer given)
{
    if (!mayTry() || m_sheet.stop || m_sheet.reversed)
        return;
    const Outcome kept = m_presenter.answer(*m_record, m_sheet.surface, kind, given, m_people);
    if (!kept)
        emit problemArose(kept.problem());
    emit changed();
}

void ControlCheckPanel::keep(MeasureKind kind, const QString& typed)
{
    if (!mayTry())
        return;
    const auto refusal =
        m_presenter.keep(*m_record, m_sheet.surface, kind, unitFor(kind), typed, *m_people.atSurface);
    if (!refusal) {
        emit problemArose(refusal.problem());
        return;
    }
    if (!refusal.value().isEmpty())
        return card(kind)->refuse(refusal.value());
    card(kind)->clear();
    emit changed();
}

void ControlCheckPanel::addUsual()
{
    const Outcome added = m_presenter.addUsualSurfaces(m_view.airframe.id, m_people.atSurface);
    if (!added)
        emit problemArose(added.problem());
    emit changed();
}

void ControlCheckPanel::choosePeople()
{
    m_people = {m_atSurface->chosen<PersonId>(), m_inCockpit->chosen<PersonId>()};
    showSheet();
    if (m_people.areTwo())
        emit changed();
}

void ControlCheckPanel::go(SurfaceId surface)
{
    m_current = surface;
    for (MeasureCard* one : m_cards)
        one->clear();
    const auto shown = std::ranges::find(m_view.surfaces, surface, &Surface::id);
    m_unit->setCurrentIndex(static_cast<int>(shown->unit));
    showSheet();
    emit changed();
}

std::optional<SurfaceId> ControlCheckPanel::nextWaiting() const
{
    if (m_sheet.reversed)
        return std::nullopt;
    const auto& all = m_view.review.surfaces;
    const auto here = std::ranges::find(all, m_current, &SurfaceProgress::id);
    const auto isWaiting = [](const SurfaceProgress& one) {
        const bool saidNo =
            std::ranges::any_of(one.answers, [](const auto& given) { return given.second == Answer::No; });
        return one.next && !(one.doubted && saidNo);
    };
    const auto start = here == all.end() ? all.begin() : std::next(here);
    if (const auto after = std::find_if(start, all.end(), isWaiting); after != all.end())
        return after->id;
    if (const auto before = std::find_if(all.begin(), here, isWaiting); before != here)
        return before->id;
    return std::nullopt;
}

void ControlCheckPanel::next()
{
    if (const auto waiting = nextWaiting(); waiting && !m_view.surfaces.empty())
        go(*waiting);
    else
        emit onwardAsked();
}

void ControlCheckPanel::step(int by)
{
    const auto& all = m_view.surfaces;
    const auto here = std::ranges::find(all, m_current, &Surface::id);
    const auto at = std::distance(all.begin(), here) + by;
    if (here != all.end() && at >= 0 && at < std::ssize(all))
        go(all[static_cast<std::size_t>(at)].id);
}

bool ControlCheckPanel::takeKey(QKeyEvent* event)
{
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (m_view.surfaces.empty())
        return enter ? (m_usual->click(), true) : false;
    if (const auto given = answerFor(*event)) {
        if (!mayTry() || !m_sheet.asked())
            return false;
        answer(*m_sheet.asked(), *given);
        return true;
    }
    if (mayTry() && m_figures->isVisibleTo(this))
        for (const MeasureKind kind : kMeasures)
            if (isKey(*event, ControlWords::keyOf(kind)))
                return card(kind)->focusLine(), true;
    if (enter && m_next->isEnabled())
        return m_next->click(), true;
    return false;
}

} // namespace rig
