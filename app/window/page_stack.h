#pragma once

#include "app/pages/page.h"
#include "app/pages/period_choice.h"
#include "app/window/top_bar.h"

#include <QStackedWidget>

#include <array>
#include <vector>

namespace rig {

class AsidePage;
class Clock;
class ConflictsPage;
class CopiesPage;
class FaultsPage;
class ManualPage;
class Prompts;
class QuestionsPage;
class RiggedTodayPage;
class Session;
class TrendsPage;
struct KeptCopy;

// A page that is no moment of its own: a line below the top bar or the file's menu leads to it.
enum class Beside { Questions, Faults, Conflicts, Copies, Manual };

// The pages of one window. Each is made when it is first asked for: making all of them took most of the time
// of opening a file.
class PageStack : public QStackedWidget
{
    Q_OBJECT

public:
    PageStack(const Clock& clock, Prompts& prompts, QWidget* parent = nullptr);

    // Of the pages that are made from now on; outlives them.
    void setSession(Session& session) { m_session = &session; }
    // All of them end and go, before the session does.
    void drop();

    Page* moment(Moments moment);     // null before a file is open
    Page* made(Moments moment) const; // null where it was not asked for yet
    RiggedTodayPage& riggedToday();   // while a file is open, as those below
    TrendsPage& trends();
    QuestionsPage& questions();
    FaultsPage& faults();
    ConflictsPage& conflicts();
    CopiesPage& copies();
    ManualPage& manual(); // always
    // One of those that judge many readings when they are shown; false: they are there.
    bool makeOneAhead();

    std::vector<Page*> all() const;           // that were made
    std::vector<AsidePage*> asides() const;   // of them, those beside the moments
    Page* seen() const;                       // null: none of them
    std::optional<Beside> besideSeen() const; // none: one of the moments, or no page
    bool isMade(Beside page) const { return m_besides[static_cast<std::size_t>(page)]; }
    // A second person works without seeing the first result. They may have gone to another page meanwhile.
    bool isBlind() const;
    // Of the manual, for what is seen; `last`: the moment that was shown last.
    QString chapterSeen(Moments last) const;
    void setLook(const Look& look);

signals:
    void problemArose(const QString& sentence);
    void airframesChanged();
    void factsChanged();
    void momentAsked(rig::Moments moment);
    void leaveAsked(); // a page beside the moments
    void copyLookAsked(const rig::KeptCopy& copy);
    void copyBringBackAsked(const rig::KeptCopy& copy);

private:
    Page* newMoment(Moments moment);
    Page* newAnnual();
    Page* newTrends();
    Page* newSetUp();
    CopiesPage* newCopies();
    template <typename Made> Made& beside(Beside which, auto make);
    Page* added(Page* page);

    const Clock& m_clock;
    Prompts& m_prompts;
    Session* m_session = nullptr;
    Look m_look;
    PeriodChoice m_period; // while the file is open
    std::array<Page*, 5> m_moments{};
    std::array<AsidePage*, 5> m_besides{};
};

} // namespace rig
