#pragma once

#include "app/pages/rigged_today/rigged_today_view.h"
#include "app/theme/theme.h"

#include <QWidget>

class QLabel;
class QLineEdit;
class QPushButton;
class QRadioButton;
class QVBoxLayout;

namespace rig {

class ChoiceBox;
class PersonNote;

// Before a record: what the last one was, who leads this one.
class StartPanel : public QWidget
{
    Q_OBJECT

public:
    explicit StartPanel(QWidget* parent = nullptr);

    void display(const RiggedTodayView& view);
    void displayNothing(); // no airframe yet
    void setLook(const Look& look);
    // What has to be there before a rigging can begin, today or from paper; empty: it can.
    static QString missingIn(const RiggedTodayView& view);
    // A key pressed anywhere on the page. False when it means nothing here.
    bool takeKey(QKeyEvent* event);

signals:
    void beginAsked(rig::PersonId leader, rig::RecordOrigin origin, std::optional<int> celsius);
    void takenApart(rig::PersonId statedBy);
    void noteReadAsked(rig::PersonId person);
    void lastRecordAsked();
    void paperAsked(); // a rigging that stands on paper is to be typed in

private:
    void addSince(QVBoxLayout* layout);
    void begin();
    void showStanding();
    void sayMissing(const QString& missing);
    void sayTakenApart();
    void addNotes(QVBoxLayout* layout);
    void showNotes();
    void sayRead();

    RiggedTodayView m_view;
    QLabel* m_last = nullptr;
    QPushButton* m_showLast = nullptr;
    QWidget* m_notes = nullptr; // what was left for whoever rigs next
    QLabel* m_notesText = nullptr;
    QPushButton* m_read = nullptr;
    QLabel* m_whole = nullptr; // which joints ask for the whole check, and why
    QLabel* m_missing = nullptr;
    ChoiceBox* m_leader = nullptr;
    PersonNote* m_standing = nullptr; // of the leader
    QLineEdit* m_celsius = nullptr;
    QPushButton* m_apart = nullptr;
    QPushButton* m_paper = nullptr;
    QWidget* m_since = nullptr; // asked while it may still stand rigged
    QRadioButton* m_anew = nullptr;
    QRadioButton* m_stood = nullptr;
    QPushButton* m_begin = nullptr;
};

} // namespace rig
