#pragma once

#include "app/pages/aside_page.h"
#include "core/result.h"
#include "core/review/chain_state.h"
#include "core/store/copies.h"

class QLabel;
class QPushButton;

namespace rig {

class RowList;
class Session;

// A copy beside the open file, with what a look into it says.
struct LookedCopy
{
    KeptCopy copy;
    FileEnd end;
    std::optional<PrintPlace> place;     // of that end in the open file; empty: it never ended so
    std::optional<Problem> problem = {}; // it cannot be opened; nothing is known of its end then
};

// Opens each of them to look: a moment for each of a large file.
std::vector<LookedCopy> lookAtCopies(Session& session, const Clock& clock);

// The copies beside the open file, to look at or to bring back. It is no moment of its own: the file's menu
// leads here, and Esc back to where one was.
class CopiesPage : public AsidePage
{
    Q_OBJECT

public:
    explicit CopiesPage(QWidget* parent = nullptr);

    // `isFileChanged`: by another program, so that an end that it had is no proof of what stands in it.
    void display(std::vector<LookedCopy> copies, bool isFileChanged);
    void showAirframe(std::optional<AirframeId>) override {} // they are of the whole file
    void setLook(const Look& look) override;

signals:
    void lookAsked(const rig::KeptCopy& copy);
    void bringBackAsked(const rig::KeptCopy& copy);

protected:
    void focusInEvent(QFocusEvent* event) override;

private:
    QWidget* makeList();
    QWidget* makePanel();
    void displayRow(int row);
    void look();
    void bringBack();
    const LookedCopy* shown() const; // null where there is none that can be opened

    std::vector<LookedCopy> m_copies;
    bool m_isFileChanged = false;
    int m_shown = -1;
    RowList* m_rows = nullptr;
    QLabel* m_count = nullptr;
    QLabel* m_title = nullptr;
    QLabel* m_file = nullptr;
    QLabel* m_end = nullptr;
    QLabel* m_place = nullptr;
    QWidget* m_buttons = nullptr;
};

} // namespace rig
