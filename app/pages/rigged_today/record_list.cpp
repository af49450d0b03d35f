#include "app/pages/rigged_today/record_list.h"

#include "app/widgets/flow_scroll.h"
#include "app/widgets/parts.h"
#include "app/widgets/wrap_layout.h"
#include "app/wording/connected_words.h"
#include "app/wording/control_words.h"
#include "app/wording/formats.h"
#include "app/wording/rigged_words.h"
#include "app/wording/standing_words.h"

#include <QLabel>
#include <QProgressBar>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace rig {

namespace {

// How far the couplings have come in this turn, as far as it is told to whoever works.
RecordCount progressIn(const RiggedTodayView& view, const RiggingSession& session, Turn turn)
{
    RecordCount count;
    count.all = static_cast<int>(view.review.couplings.size());
    for (const CouplingProgress& one : view.review.couplings) {
        const bool isDone = one.stage == CouplingStage::BothDone ||
                            (turn == Turn::First && one.stage == CouplingStage::FirstDone);
        const auto standing = view.standings.find(one.id);
        const bool isHidden = view.now && isHiddenNow(session, *view.now, one.id);
        const bool isOpen = standing != view.standings.end() && standing->second.isUnresolved && !isHidden;
        if (one.stop)
            ++count.stopped;
        else if (isDone && isOpen)
            ++count.open;
        else if (isDone)
            ++count.done;
    }
    return count;
}

QString secondProgress(const RiggedTodayView& view, const RiggingSession& session)
{
    return RiggedWords::secondProgress(progressIn(view, session, Turn::Second));
}

} // namespace

RecordList::RecordList(QWidget* parent) : QFrame{parent}
{
    setProperty("card", true);
    auto* outer = new QVBoxLayout{this};
    outer->setContentsMargins(10, 14, 10, 10);
    outer->setSpacing(6);
    auto* heading = new QLabel{RiggedWords::recordHeading()};
    heading->setTextFormat(Qt::PlainText);
    heading->setProperty("kind", "label");
    m_day = new QLabel;
    m_day->setTextFormat(Qt::PlainText);
    m_day->setProperty("kind", "soft");
    auto* top = new WrapLayout{10, false};
    top->addWidget(heading);
    top->addWidget(m_day);
    outer->addLayout(top);
    m_progress = new QLabel;
    m_progress->setTextFormat(Qt::PlainText);
    m_progress->setProperty("kind", "section");
    m_progress->setWordWrap(true);
    m_progress->setObjectName("recordProgress");
    outer->addWidget(m_progress);
    m_bar = new QProgressBar;
    m_bar->setTextVisible(false);
    m_bar->setAccessibleName(RiggedWords::recordHeading());
    outer->addWidget(m_bar);
    m_shift = labelOf({}, "caution", "sharedShift");
    m_shift->hide();
    outer->addWidget(m_shift);

    auto* inside = new QWidget;
    m_layout = new QVBoxLayout{inside};
    m_layout->setContentsMargins(0, 4, 0, 0);
    m_layout->setSpacing(2);
    m_layout->addStretch(1);
    m_scroll = new FlowScroll{inside};
    outer->addWidget(m_scroll, 1);
}

void RecordList::setLook(const Look& look)
{
    m_look = look;
    setFixedWidth(static_cast<int>(std::lround(300 * std::min(look.fonts.scale, 1.25))));
    for (MarkRow* one : m_rows)
        dress(*one);
}

// At large text hardly a word would be left of a line.
void RecordList::dress(MarkRow& row) const
{
    constexpr double kLarge = 1.25;
    row.setLook(m_look);
    row.setWraps(m_look.fonts.scale > kLarge);
}

MarkRow* RecordList::row(std::size_t index)
{
    while (m_rows.size() <= index) {
        auto* one = new MarkRow;
        dress(*one);
        const std::size_t at = m_rows.size();
        one->setObjectName(QStringLiteral("recordRow%1").arg(at));
        connect(one, &QAbstractButton::clicked, this, [this, at] { emit chosen(m_places[at]); });
        m_layout->insertWidget(static_cast<int>(at), one);
        m_rows.push_back(one);
    }
    return m_rows[index];
}

void RecordList::display(const RiggedTodayView& view, const RiggingSession& session)
{
    const RecordPlace& current = session.place;
    const Turn turn = session.turn;
    const Formats formats;
    const RecordCount count = progressIn(view, session, turn);
    m_day->setText(view.record ? formats.moment(view.record->begins) : QString{});
    const bool isSecondBegun = session.second || (view.now && view.now->isSecondBegun());
    if (turn == Turn::First)
        m_progress->setText(RiggedWords::progress(count));
    else
        m_progress->setText(isSecondBegun ? secondProgress(view, session)
                                          : RiggedWords::secondNotBegunTitle());
    m_bar->setRange(0, std::max(1, count.all));
    m_bar->setValue(count.done);

    const bool isAnyHidden =
        view.now && std::ranges::any_of(view.now->couplings, [&](const CouplingNow& one) {
            return isHiddenNow(session, *view.now, one.id);
        });
    const bool isShifted =
        turn == Turn::First && !isAnyHidden && view.sharedShift && view.sharedShift->isCalled;
    sayIn(m_shift, isShifted ? RiggedWords::sharedShift(*view.sharedShift) : QString{});

    m_places.clear();
    const auto step = [&](RecordPlace::Kind kind, MarkShape shape, bool isCurrent, const QString& title,
                          const QString& detail) {
        MarkRow* one = row(m_places.size());
        one->show(isCurrent ? MarkShape::Current : shape, isCurrent ? Role::Accent : Role::InkSoft, title,
                  detail);
        one->setChecked(isCurrent);
        m_places.push_back({kind, {}});
    };
    if (view.isFirstOfSeason) {
        const int left = static_cast<int>(view.review.seasonList.size());
        step(RecordPlace::Kind::Season, left == 0 ? MarkShape::Done : MarkShape::Waiting,
             current.kind == RecordPlace::Kind::Season, RiggedWords::seasonTitle(view.isSeasonNotKnown),
             RiggedWords::seasonDetail(left));
    }
    if (view.now) {
        const std::vector<SideNow>& sides = view.now->sides;
        const auto said = std::ranges::count_if(sides, &SideNow::isSaid);
        step(RecordPlace::Kind::Connected, said == std::ssize(sides) ? MarkShape::Done : MarkShape::Waiting,
             current.kind == RecordPlace::Kind::Connected, ConnectedWords::place(),
             ConnectedWords::listDetail(static_cast<int>(said), static_cast<int>(sides.size())));
    }
    for (const CouplingProgress& one : view.review.couplings) {
        const RecordPlace place{RecordPlace::Kind::Coupling, one.id};
        const auto standing = view.standings.find(one.id);
        const bool isHidden = view.now && isHiddenNow(session, *view.now, one.id);
        const bool isTold = turn == Turn::First && (place == current || !isHidden);
        showCoupling(row(m_places.size()), one,
                     standing == view.standings.end() ? CouplingStanding{} : standing->second,
                     {isTold ? Turn::First : Turn::Second, place == current, isHidden});
        m_places.push_back(place);
    }
    const bool closing = current.kind == RecordPlace::Kind::Close;
    const bool checking = current.kind == RecordPlace::Kind::ControlCheck;
    step(RecordPlace::Kind::SecondInspection, MarkShape::Waiting,
         turn == Turn::Second && current.kind == RecordPlace::Kind::Coupling, RiggedWords::secondInspection(),
         isSecondBegun ? secondProgress(view, session) : RiggedWords::secondNotBegun());
    showControlCheck(row(m_places.size()), view.review, checking);
    m_places.push_back({RecordPlace::Kind::ControlCheck, {}});
    step(RecordPlace::Kind::Close, MarkShape::Waiting, closing, RiggedWords::close(),
         RiggedWords::closeHint());
    for (std::size_t i = 0; i < m_rows.size(); ++i)
        m_rows[i]->setVisible(i < m_places.size());
    const auto now = std::ranges::find_if(m_rows, &QAbstractButton::isChecked);
    if (now != m_rows.end()) // once the layout has settled
        QTimer::singleShot(0, m_scroll, [this, row = *now] { m_scroll->bringIntoView(row); });
}

void RecordList::showControlCheck(MarkRow* row, const RecordReview& review, bool isCurrent)
{
    const int all = static_cast<int>(review.surfaces.size());
    const auto stopped = std::ranges::find_if(
        review.surfaces, [](const SurfaceProgress& one) { return one.stop.has_value(); });
    const auto doubted = stopped != review.surfaces.end()
                             ? stopped
                             : std::ranges::find_if(review.surfaces, [](const SurfaceProgress& one) {
                                   return one.doubt.has_value();
                               });
    const bool setBack = std::ranges::any_of(
        review.surfaces, [](const SurfaceProgress& one) { return one.isToBeTriedAgain(); });
    MarkShape shape = MarkShape::Waiting;
    Role role = Role::InkSoft;
    if (stopped != review.surfaces.end()) {
        shape = shapeOf(Verdict::Outside);
        role = shapeRoleOf(Verdict::Outside);
    } else if (isCurrent) {
        shape = MarkShape::Current;
        role = Role::Accent;
    } else if (doubted != review.surfaces.end()) {
        shape = MarkShape::HalfDisc;
        role = Role::NearEdge;
    } else if (setBack) {
        shape = MarkShape::Triangle;
        role = Role::NearEdge;
    } else if (all > 0 && review.surfacesDone() == all) {
        shape = MarkShape::Done;
    }
    QString detail =
        all > 0 ? ControlWords::progress(review.surfacesDone(), all) : ControlWords::noneInList();
    if (doubted != review.surfaces.end() && doubted->doubt)
        detail = RiggedWords::unresolvedMark(detail, StandingWords::asked(doubted->name, *doubted->doubt));
    else if (setBack)
        detail = ControlWords::setBackMark(detail);
    row->show(shape, role, ControlWords::place(), detail);
    row->setChecked(isCurrent);
}

namespace {

QString nowOf(Step step)
{
    switch (step) {
    case Step::Look:
        return RiggedWords::lookNow();
    case Step::Measure:
        return RiggedWords::measureNow();
    case Step::Pull:
        return RiggedWords::pullNow();
    case Step::Secure:
        return RiggedWords::secureNow();
    case Step::Done:
        break;
    }
    return {};
}

} // namespace

QString RecordList::detailFor(const CouplingProgress& one, const CouplingStanding& standing, const RowOf& of)
{
    if (of.turn == Turn::Second && standing.asked == QuestionKind::SurfaceDoubt)
        return one.stop ? RiggedWords::stopFor(StandingWords::word(standing))
                        : StandingWords::word(standing); // it hides nothing of the first person's
    if (of.turn == Turn::Second && one.stop)
        return RiggedWords::stopHere(); // its card says so to both; the work goes past it
    if (of.turn == Turn::Second) {
        switch (one.stage) {
        case CouplingStage::BothDone: {
            const QString done = RiggedWords::secondPersonDone(one.parts.pull);
            return standing.isSaidFirst() && !of.isHidden
                       ? RiggedWords::unresolvedMark(done, StandingWords::word(standing))
                       : done;
        }
        case CouplingStage::FirstDone:
            return of.isHidden ? RiggedWords::firstPersonDone() : RiggedWords::begunNotDone();
        case CouplingStage::Begun:
        case CouplingStage::Waiting:
            break;
        }
        return RiggedWords::firstPersonNotDone();
    }
    QString detail = of.isCurrent ? nowOf(one.next) : RiggedWords::waiting();
    if (one.stop) { // why, in sight when the line is cut
        detail = standing.isUnresolved ? RiggedWords::stopFor(StandingWords::word(standing))
                                       : RiggedWords::stopHere();
        return one.interrupted ? RiggedWords::interruptedMark(detail) : detail;
    }
    if (one.stage == CouplingStage::Begun && !of.isCurrent)
        detail = RiggedWords::begunNotDone();
    const bool firstDone = one.stage == CouplingStage::FirstDone || one.stage == CouplingStage::BothDone;
    if (firstDone && !one.parts.gap)
        detail = RiggedWords::doneWithoutGap(one.parts);
    else if (firstDone && one.reading)
        detail = one.parts.pull ? RiggedWords::readLookedPulled(Formats{}.interval(*one.reading))
                                : RiggedWords::readAndLooked(Formats{}.interval(*one.reading));
    if (one.stage == CouplingStage::BothDone)
        detail = RiggedWords::bothDone(detail);
    if (one.interrupted)
        detail = firstDone ? RiggedWords::onceInterruptedMark(detail) : RiggedWords::interruptedMark(detail);
    if (standing.isSaidFirst())
        detail = RiggedWords::unresolvedMark(detail, StandingWords::word(standing));
    return detail;
}

void RecordList::showCoupling(MarkRow* row, const CouplingProgress& one, const CouplingStanding& standing,
                              const RowOf& of)
{
    MarkShape shape = MarkShape::Waiting;
    Role role = Role::InkSoft;
    const bool firstDone = one.stage == CouplingStage::FirstDone || one.stage == CouplingStage::BothDone;
    if (one.stop) { // the frame and the weight of its name say that it is at hand
        shape = shapeOf(Verdict::Outside);
        role = shapeRoleOf(Verdict::Outside);
    } else if (of.isCurrent) {
        shape = MarkShape::Current;
        role = Role::Accent;
    } else if (standing.asked == QuestionKind::SurfaceDoubt) {
        shape = shapeOf(standing.says);
        role = shapeRoleOf(standing.says);
    } else if (of.turn == Turn::Second && one.stage == CouplingStage::BothDone && standing.isSaidFirst() &&
               !of.isHidden) {
        shape = shapeOf(standing.says);
        role = shapeRoleOf(standing.says);
    } else if (of.turn == Turn::Second && one.stage == CouplingStage::BothDone) {
        shape = MarkShape::Done;
    } else if (of.turn == Turn::First && firstDone && standing.says == Says::NoGap) {
        shape = MarkShape::Done; // that it was looked at; there is nothing to be judged
    } else if (of.turn == Turn::First && (standing.isSaidFirst() || firstDone)) {
        shape = shapeOf(standing.says);
        role = shapeRoleOf(standing.says);
    }
    row->show(shape, role, QString::fromStdString(one.name), detailFor(one, standing, of));
    row->setChecked(of.isCurrent);
}

} // namespace rig
