#include "app/window/page_stack.h"

#include "app/pages/annual/annual_page.h"
#include "app/pages/learn/learn_page.h"
#include "app/pages/questions/questions_page.h"
#include "app/pages/rigged_today/rigged_today_page.h"
#include "app/pages/setup/setup_page.h"
#include "app/pages/trends/trends_page.h"
#include "app/window/conflicts_page.h"
#include "app/window/copies_page.h"
#include "app/window/faults_page.h"
#include "app/window/manual_page.h"
#include "app/window/remembered.h"
#include "app/window/session.h"
#include "core/store/copies.h"

#include <QTimer>

#include <algorithm>

namespace rig {

PageStack::PageStack(const Clock& clock, Prompts& prompts, QWidget* parent)
    : QStackedWidget{parent}, m_clock{clock}, m_prompts{prompts}
{
}

void PageStack::drop()
{
    for (Page* page : all()) {
        page->end();
        removeWidget(page);
        delete page;
    }
    m_moments.fill(nullptr);
    m_besides.fill(nullptr);
    m_period = {};
    m_session = nullptr;
}

Page* PageStack::moment(Moments moment)
{
    Page*& page = m_moments[static_cast<std::size_t>(moment)];
    if (!page && m_session)
        page = added(newMoment(moment));
    return page;
}

Page* PageStack::made(Moments moment) const
{
    return m_moments[static_cast<std::size_t>(moment)];
}

Page* PageStack::newMoment(Moments moment)
{
    Records& records = m_session->records();
    switch (moment) {
    case Moments::RiggedToday:
        return new RiggedTodayPage{records, m_clock, m_prompts};
    case Moments::Trends:
        return newTrends();
    case Moments::BeforeTheAnnual:
        return newAnnual();
    case Moments::KnowThisAirframe:
        return new LearnPage{records, m_clock, m_prompts,
                             m_session->isDemo() ? LearnerMemory{} : rememberedLearners()};
    case Moments::SetUp:
        break;
    }
    return newSetUp();
}

Page* PageStack::newAnnual()
{
    auto* annual = new AnnualPage{m_session->records(), m_clock, m_prompts};
    annual->sharePeriod(m_period);
    connect(annual, &AnnualPage::trendWanted, this,
            [this](CouplingId coupling, const std::optional<ReadingId>& reading) {
                emit momentAsked(Moments::Trends);
                trends().visit(coupling, reading);
            });
    return annual;
}

Page* PageStack::newTrends()
{
    auto* trends = new TrendsPage{m_session->records(), m_clock};
    trends->sharePeriod(m_period);
    connect(trends, &TrendsPage::annualWanted, this, [this] { emit momentAsked(Moments::BeforeTheAnnual); });
    return trends;
}

Page* PageStack::newSetUp()
{
    auto* setUp = new SetUpPage{m_session->records(), m_clock, m_prompts};
    connect(setUp, &SetUpPage::paperEntryAsked, this, [this] {
        emit momentAsked(Moments::RiggedToday);
        riggedToday().enterFromPaper();
    });
    return setUp;
}

RiggedTodayPage& PageStack::riggedToday()
{
    return *qobject_cast<RiggedTodayPage*>(moment(Moments::RiggedToday));
}

TrendsPage& PageStack::trends()
{
    return *qobject_cast<TrendsPage*>(moment(Moments::Trends));
}

template <typename Made> Made& PageStack::beside(Beside which, auto make)
{
    AsidePage*& page = m_besides[static_cast<std::size_t>(which)];
    if (!page) {
        page = make();
        connect(page, &AsidePage::leaveAsked, this, &PageStack::leaveAsked);
        added(page);
    }
    return *qobject_cast<Made*>(page);
}

QuestionsPage& PageStack::questions()
{
    return beside<QuestionsPage>(Beside::Questions,
                                 [this] { return new QuestionsPage{m_session->records()}; });
}

FaultsPage& PageStack::faults()
{
    return beside<FaultsPage>(Beside::Faults, [] { return new FaultsPage; });
}

ConflictsPage& PageStack::conflicts()
{
    return beside<ConflictsPage>(Beside::Conflicts,
                                 [this] { return new ConflictsPage{m_session->records()}; });
}

CopiesPage& PageStack::copies()
{
    return beside<CopiesPage>(Beside::Copies, [this] { return newCopies(); });
}

ManualPage& PageStack::manual()
{
    return beside<ManualPage>(Beside::Manual, [this] { return new ManualPage{m_prompts}; });
}

// Both leave this page behind, which is still in the middle of a press.
CopiesPage* PageStack::newCopies()
{
    const auto later = [this](void (PageStack::*asked)(const KeptCopy&)) {
        return [this, asked](const KeptCopy& copy) {
            QTimer::singleShot(0, this, [this, asked, copy] { emit(this->*asked)(copy); });
        };
    };
    auto* copies = new CopiesPage;
    connect(copies, &CopiesPage::lookAsked, this, later(&PageStack::copyLookAsked));
    connect(copies, &CopiesPage::bringBackAsked, this, later(&PageStack::copyBringBackAsked));
    return copies;
}

Page* PageStack::added(Page* page)
{
    addWidget(page);
    connect(page, &Page::problemArose, this, &PageStack::problemArose);
    connect(page, &Page::airframesChanged, this, &PageStack::airframesChanged);
    connect(page, &Page::factsChanged, this, &PageStack::factsChanged);
    page->setLook(m_look);
    return page;
}

bool PageStack::makeOneAhead()
{
    for (const Moments moment : {Moments::Trends, Moments::BeforeTheAnnual})
        if (!made(moment))
            return this->moment(moment);
    return false;
}

std::vector<Page*> PageStack::all() const
{
    std::vector<Page*> pages{m_moments.begin(), m_moments.end()};
    pages.insert(pages.end(), m_besides.begin(), m_besides.end());
    std::erase(pages, nullptr);
    return pages;
}

std::vector<AsidePage*> PageStack::asides() const
{
    std::vector<AsidePage*> pages{m_besides.begin(), m_besides.end()};
    std::erase(pages, nullptr);
    return pages;
}

Page* PageStack::seen() const
{
    return qobject_cast<Page*>(currentWidget());
}

std::optional<Beside> PageStack::besideSeen() const
{
    const auto seen = std::ranges::find(m_besides, qobject_cast<AsidePage*>(currentWidget()));
    if (seen == m_besides.end() || !*seen)
        return std::nullopt;
    return static_cast<Beside>(seen - m_besides.begin());
}

bool PageStack::isBlind() const
{
    const Page* rigged = made(Moments::RiggedToday);
    return rigged && rigged->isBlind();
}

QString PageStack::chapterSeen(Moments last) const
{
    static constexpr std::array kOfBesides{"questions.md", "changed-facts.md", "two-laptops.md", "copies.md",
                                           "start.md"};
    static constexpr std::array kOfMoments{"rigged-today.md", "trends.md", "before-the-annual.md",
                                           "know-this-airframe.md", "set-up.md"};
    if (!seen())
        return QLatin1String(kOfBesides.back());
    if (const auto beside = besideSeen())
        return QLatin1String(kOfBesides[static_cast<std::size_t>(*beside)]);
    if (last == Moments::RiggedToday && isBlind())
        return QStringLiteral("second-person.md");
    return QLatin1String(kOfMoments[static_cast<std::size_t>(last)]);
}

void PageStack::setLook(const Look& look)
{
    m_look = look;
    for (Page* page : all())
        page->setLook(look);
}

} // namespace rig
