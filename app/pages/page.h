#pragma once

#include "app/theme/theme.h"
#include "app/widgets/reading_order.h"
#include "core/airframe/ids.h"

#include <QWidget>

#include <optional>
#include <vector>

namespace rig {

// The property of a widget that says in words what is typed there is about, such as the name of a joint.
inline constexpr const char* kIsAbout = "isAbout";

// Words that were typed and stand in no field now: each is put there again with what it is about.
struct TypedAside
{
    QString about;
    QString field;
    QString text;
};

// A joint or a surface that somebody works at.
struct AtHand
{
    std::optional<CouplingId> coupling = {};
    std::optional<SurfaceId> surface = {};
};

// One of the five moments. The window shows it for an airframe; it says when something went wrong or when the
// list of airframes changed by its doing.
class Page : public QWidget
{
    Q_OBJECT

public:
    explicit Page(QWidget* parent = nullptr) : QWidget{parent} { setProperty("page", true); }

    // Reads the facts anew. Empty: the file knows no airframe yet. What is said beside the page the window
    // reads itself.
    virtual void showAirframe(std::optional<AirframeId> airframe) = 0;
    virtual void setLook(const Look& look) = 0;
    // Another page is about to be seen: what was pressed is saved, and what is half done waits.
    virtual void leave() {}
    // The program is about to be closed, or the file: whatever is half done is noted as interrupted.
    virtual void end() { leave(); }
    // Another window has written while the page is seen: it is shown, and nothing that was typed is lost.
    // What is said beside the page the window reads itself.
    virtual void catchUp() {}
    // What is asked before the program is closed on it; empty: nothing is half done.
    virtual QString leftUndone() const { return {}; }
    // The same before the window speaks another language: what it hands on is not lost by that.
    virtual QString lostWithTheLanguage() const { return leftUndone(); }
    // What is typed beside the fields that are seen.
    virtual std::vector<TypedAside> typedAside() const { return {}; }
    // A second person works without seeing the first result: nothing around the page may tell it.
    virtual bool isBlind() const { return false; }

protected:
    // By itself as within the window.
    bool focusNextPrevChild(bool next) override
    {
        return isWindow() ? goOnAsRead(*this, next) : QWidget::focusNextPrevChild(next);
    }

signals:
    void problemArose(const QString& sentence);
    void airframesChanged();
    void factsChanged(); // what the window says beside the page may no longer hold
};

} // namespace rig
