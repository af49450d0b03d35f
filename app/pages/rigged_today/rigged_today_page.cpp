#include "app/pages/rigged_today/rigged_today_page.h"

#include "app/pages/rigged_today/coupling_panel.h"
#include "app/pages/rigged_today/looking_back.h"
#include "app/pages/rigged_today/paper_banner.h"
#include "app/pages/rigged_today/paper_start.h"
#include "app/pages/rigged_today/record_list.h"
#include "app/pages/rigged_today/rigged_panels.h"
#include "app/pages/rigged_today/rigging_notices.h"
#include "app/pages/rigged_today/start_panel.h"
#include "app/pages/rigged_today/summary_panel.h"
#include "app/widgets/parts.h"
#include "app/wording/formats.h"
#include "app/wording/paper_words.h"
#include "app/wording/problem_words.h"
#include "app/wording/window_words.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace rig {

namespace {

// Milliseconds: between two keys of somebody who types without looking up; nobody looks at a joint in less.
constexpr int kQuiet = 250;

} // namespace

RiggedTodayPage::RiggedTodayPage(Records& records, const Clock& clock, Prompts& prompts, QWidget* parent)
    : Page{parent}, m_work{records, clock}, m_photos{m_work.presenter()}, m_prompts{prompts}
{
    setObjectName("riggedToday");
    setAccessibleName(WindowWords::riggedToday());
    setFocusPolicy(Qt::StrongFocus);
    build(records, clock);
    makeTimers();
    connectKeys();
    connectStart();
    connectPanels();
    connectCoupling();
}

void RiggedTodayPage::build(Records& records, const Clock& clock)
{
    auto* layout = new QHBoxLayout{this};
    layout->setContentsMargins(14, 14, 14, 14);
    layout->setSpacing(14);
    m_list = new RecordList;
    layout->addWidget(m_list);
    auto* card = new QFrame;
    card->setProperty("card", true);
    auto* inner = new QVBoxLayout{card};
    inner->setContentsMargins(1, 1, 1, 1);
    m_banner = new PaperBanner;
    inner->addWidget(m_banner);
    m_news = labelOf({}, "caution", "riggingNews");
    m_news->setContentsMargins(28, 10, 28, 4);
    m_news->hide();
    inner->addWidget(m_news);
    m_panels = new RiggedPanels{records, clock, m_prompts};
    inner->addWidget(m_panels);
    layout->addWidget(card, 1);
}

void RiggedTodayPage::makeTimers()
{
    // Runs when nothing else waits, so that the verdict is painted first and the save follows, or before
    // whatever is pressed earlier than that. A queued call would come before the painting.
    m_saving = new QTimer{this};
    m_saving->setSingleShot(true);
    connect(m_saving, &QTimer::timeout, this, [this] {
        settle();
        stayQuiet(); // a save may take longer than that
    });
    m_lookingBack = new LookingBack{m_work.presenter(), this};
    connect(m_lookingBack, &LookingBack::isDue, this, &RiggedTodayPage::lookBack);
    m_quiet = new QTimer{this};
    m_quiet->setObjectName("typedAhead");
    m_quiet->setSingleShot(true);
    m_quiet->setInterval(kQuiet);
    m_idle = new QTimer{this};
    m_idle->setSingleShot(true);
    m_idle->setInterval(kIdleMinutes * 60 * 1000);
    connect(m_idle, &QTimer::timeout, this, [this] { breakOff(InterruptionReason::Idle); });
}

void RiggedTodayPage::catchUp()
{
    if (m_work.session().pressed || !m_work.airframe() || !m_work.hasMovedOn())
        return;
    if (report(m_work.catchUp()))
        display();
}

void RiggedTodayPage::setLook(const Look& look)
{
    m_list->setLook(look);
    m_panels->setLook(look);
}

void RiggedTodayPage::showAirframe(std::optional<AirframeId> airframe)
{
    settle();
    if (m_work.airframe() != airframe) {
        breakOff(InterruptionReason::Asked);
        m_work.turnTo(airframe);
    }
    report(m_work.resume());
    report(m_work.readPeople());
    if (report(m_work.read()))
        display();
}

void RiggedTodayPage::refresh()
{
    if (!report(m_work.read()))
        return;
    display();
    if (m_work.airframe())
        emit factsChanged();
}

void RiggedTodayPage::display()
{
    const RiggedTodayView& view = m_work.view();
    const RiggingSession& session = m_work.session();
    m_panels->display(view, session, m_work.airframe().has_value());
    const bool isCoupling = m_panels->isNow(m_panels->coupling());
    m_sheet.reset();
    if (isCoupling)
        showCoupling();
    const bool isSummary = m_panels->isNow(m_panels->summary());
    m_list->setVisible(view.now && !isSummary);
    if (view.now)
        m_list->display(view, session);
    m_banner->display(view, session);
    if (isSummary)
        m_banner->hide();
    sayIn(m_news, isCoupling ? QString{} : m_work.news());
    m_panels->bringUp();
}

void RiggedTodayPage::showCoupling()
{
    const RiggedTodayView& view = m_work.view();
    auto sheet = m_work.presenter().sheet(view, m_work.session());
    if (!sheet)
        return report(sheet.problem());
    m_sheet = std::move(sheet).value();
    m_sheet->movement = m_lookingBack->movementOf(*m_sheet, view.record->id);
    CouplingPanel* panel = m_panels->coupling();
    panel->display(view, *m_sheet, onwardText(onwardFrom(m_work.session(), *view.now)));
    panel->showPhotos(m_photos.of(*m_sheet));
    const QString hint = m_work.isFromPaper() ? QString{} : otherHandsHint(*m_sheet, view.persons);
    if (!m_work.news().isEmpty())
        panel->showNotice(m_work.news());
    else if (!hint.isEmpty())
        panel->showNotice(panel->behindWhatWentBefore(hint));
}

void RiggedTodayPage::lookBack()
{
    const RiggedTodayView& view = m_work.view();
    if (!m_work.airframe() || !view.record || m_work.session().pressed)
        return;
    if (!report(m_lookingBack->lookBack(*m_work.airframe(), view.record->id)) || !m_sheet)
        return;
    m_sheet->movement = m_lookingBack->movementOf(*m_sheet, view.record->id);
    m_panels->coupling()->showMovement(m_sheet->movement);
}

void RiggedTodayPage::enterFromPaper()
{
    if (!m_work.airframe() || !settle())
        return;
    const bool isOther = m_work.isOpen() && !m_work.isFromPaper();
    m_work.say(isOther ? PaperWords::riggingIsOpen() : QString{});
    if (m_work.isOpen() || !StartPanel::missingIn(m_work.view()).isEmpty()) {
        display();
        setFocus();
        return;
    }
    m_work.standAt(RecordPlace::Kind::Paper);
    display();
    m_panels->paper()->focusFirst();
}

void RiggedTodayPage::leavePaper()
{
    m_panels->paper()->clear();
    standAt(RecordPlace::Kind::Coupling);
}

bool RiggedTodayPage::isBlind() const
{
    const auto& now = m_work.view().now;
    return now && std::ranges::any_of(now->couplings, [&](const CouplingNow& one) {
               return isHiddenNow(m_work.session(), *now, one.id);
           });
}

QString RiggedTodayPage::leftUndone() const
{
    if (const QString lost = lostWithTheLanguage(); !lost.isEmpty())
        return lost;
    return m_work.isFromPaper()
               ? PaperWords::isHalfTyped(Formats{}.day(m_work.view().record->begins.localDay()))
               : QString{};
}

// A record that is open goes on in the next window where it was.
QString RiggedTodayPage::lostWithTheLanguage() const
{
    const bool isHeadTyped = m_panels->isNow(m_panels->paper()) && m_panels->paper()->isBegun();
    return isHeadTyped ? PaperWords::headIsNotKept() : QString{};
}

void RiggedTodayPage::leave()
{
    settle();
}

void RiggedTodayPage::end()
{
    breakOff(InterruptionReason::ProgramClosed);
    m_idle->stop();
}

AtHand RiggedTodayPage::atHand() const
{
    const RiggingSession& session = m_work.session();
    const auto& now = m_work.view().now;
    if (now && session.place.kind == RecordPlace::Kind::Coupling) {
        const CouplingNow* joint = now->find(session.place.coupling);
        const bool isOfASurface = joint && joint->stop && joint->stop->surface;
        return {session.place.coupling,
                isOfASurface ? std::optional{joint->stop->surface->surface} : std::nullopt};
    }
    if (!now || session.place.kind != RecordPlace::Kind::ControlCheck || !session.surface)
        return {};
    for (const SurfaceProgress& one : m_work.view().review.surfaces)
        if (one.stop && isOfSense(*one.stop)) // it stops the whole check
            return {{}, one.id};
    const auto surface = std::ranges::find(now->surfaces, *session.surface, &SurfaceNow::id);
    return {surface == now->surfaces.end() ? std::nullopt : surface->stoppedJoint, session.surface};
}

WorkInHand RiggedTodayPage::handOn()
{
    settle();
    return m_work.handOn();
}

void RiggedTodayPage::showLastRecord()
{
    if (m_work.airframe())
        showSummary(m_panels->summary()->showLast(*m_work.airframe()));
}

void RiggedTodayPage::showSummary(const Outcome& shown)
{
    standAt(report(shown) ? RecordPlace::Kind::Summary : RecordPlace::Kind::Coupling);
}

void RiggedTodayPage::standAt(RecordPlace::Kind place)
{
    m_work.standAt(place);
    display();
    setFocus();
}

bool RiggedTodayPage::report(const Outcome& outcome)
{
    if (!outcome)
        report(outcome.problem());
    return static_cast<bool>(outcome);
}

void RiggedTodayPage::report(const Problem& problem)
{
    emit problemArose(ProblemWords::sentence(problem, {}));
}

// Enter is for the button that has the focus, and not for one elsewhere; a box is ticked by Space.
bool RiggedTodayPage::pressesMarked()
{
    auto* marked = qobject_cast<QPushButton*>(window()->focusWidget());
    if (!marked || !isAncestorOf(marked) || !marked->isEnabled() || !marked->isVisible())
        return false;
    marked->click();
    return true;
}

void RiggedTodayPage::keyPressEvent(QKeyEvent* event)
{
    const bool isRepeated = m_heldKey.isRepeated(*event);
    if (m_quiet->isActive())
        return m_quiet->start();
    if (isRepeated || !settle())
        return;
    if (isEnter(*event) && pressesMarked())
        return;
    const bool isWithoutSheet = m_panels->isNow(m_panels->coupling()) && !m_sheet;
    if (isWithoutSheet || !m_panels->takeKey(event))
        Page::keyPressEvent(event);
    stayQuiet(); // what was shown took its time
}

void RiggedTodayPage::stayQuiet()
{
    if (m_quiet->isActive())
        m_quiet->start();
}

} // namespace rig
