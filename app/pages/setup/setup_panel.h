#pragma once

#include "app/pages/setup/setup_presenter.h"
#include "app/theme/theme.h"

#include <QWidget>

class QVBoxLayout;

namespace rig {

// One part of Set up: its title, why it is asked for, and whatever the part needs below that.
class SetUpPanel : public QWidget
{
    Q_OBJECT

public:
    struct PartText
    {
        QString title;
        QString why; // it is asked for
    };

    // `presenter` outlives it.
    SetUpPanel(SetUpPresenter& presenter, const PartText& part);

    // What is typed and not saved stays.
    virtual void display(const SetUpView& view) = 0;
    virtual void setLook(const Look& look);
    virtual bool hasUnsaved() const = 0;
    // The same of any airframe: it is lost when the file is left.
    virtual bool hasTyped() const { return hasUnsaved(); }
    // Where the next key belongs when the part is gone to.
    virtual void focusFirst() = 0;

signals:
    void problemArose(const QString& sentence);
    void changed();         // a fact was added
    void paperEntryAsked(); // a rigging that stands on paper is to be typed in

protected:
    SetUpPresenter& presenter() { return m_presenter; }
    QVBoxLayout* body() { return m_body; }
    // Says what went wrong, or that something changed. True when nothing went wrong.
    bool report(const Outcome& outcome);
    // The same for a save; a refusal is no change.
    bool report(const Result<Saved>& result);
    QString savedNow() const;

private:
    SetUpPresenter& m_presenter;
    QVBoxLayout* m_body = nullptr;
};

} // namespace rig
