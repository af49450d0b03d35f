#pragma once

#include "app/window/page_stack.h"
#include "core/result.h"

#include <QWidget>

#include <optional>

namespace rig {

class AsideBar;
class CopyBar;
class DraftBar;
class ProblemBanner;
class QuestionBar;
class Records;
class StoreFile;

// The lines below the top bar, each there for as long as it has something to say, on every page.
class Bars : public QWidget
{
    Q_OBJECT

public:
    explicit Bars(QWidget* parent = nullptr);

    ProblemBanner& problems() { return *m_problems; }
    DraftBar& drafts() { return *m_drafts; }
    CopyBar& copy() { return *m_copy; }
    QuestionBar& questions() { return *m_questions; }
    // Found behind the window when the file was opened; no later save hides it.
    void readFaults(const StoreFile& file);
    // What two laptops say differently: it takes a look at the whole file, so not after each key.
    Outcome readConflicts(Records& records);
    bool isConflictsTold() const;
    // The button of the page that is seen leads back.
    void setOnPage(std::optional<Beside> page);
    void hideOfFile(); // what they say of the file that was open
    void setLook(const Look& look);

signals:
    void showAsked(rig::Beside page);
    void leaveAsked();

private:
    AsideBar* aside(Beside page, AsideBar* bar);

    ProblemBanner* m_problems = nullptr;
    DraftBar* m_drafts = nullptr;
    AsideBar* m_faults = nullptr;
    CopyBar* m_copy = nullptr;
    QuestionBar* m_questions = nullptr;
    AsideBar* m_conflicts = nullptr;
};

} // namespace rig
