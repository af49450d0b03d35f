#pragma once

#include "app/pages/rigged_today/rigged_today_view.h"
#include "app/theme/theme.h"
#include "app/widgets/wrapped.h"

#include <QWidget>

class QLabel;
class QLineEdit;
class QPushButton;
class QVBoxLayout;

namespace rig {

class ChoiceBox;
class PersonNote;
class StopCard;

// The end of a record: what is still open, the count of tools, two different names.
class ClosePanel : public QWidget
{
    Q_OBJECT

public:
    explicit ClosePanel(QWidget* parent = nullptr);

    // What was ticked, chosen and typed stays while it is the same record.
    void display(const RiggedTodayView& view, const RiggingSession& session);
    void setLook(const Look& look);

signals:
    void closeAsked(rig::PersonId first, rig::PersonId second, const QString& note,
                    const std::vector<rig::TickKind>& counted);

private:
    void addNames(QVBoxLayout* layout);
    void showOpen(const RiggedTodayView& view, const RiggingSession& session);
    void sayWhoLed();
    void sayWhetherIndependent();
    void showStandings();
    void tryToClose();

    std::optional<RecordId> m_record; // that the names and ticks are for
    std::optional<Person> m_leader;   // of the record
    std::vector<SideNow> m_sides;     // of the record
    std::vector<PersonId> m_seconds;  // who has been second person at any joint
    PersonStandings m_people;
    StopCard* m_stop = nullptr; // with all that stops
    QLabel* m_heading = nullptr;
    QLabel* m_open = nullptr;
    WrapCheck* m_tools = nullptr;
    WrapCheck* m_hatches = nullptr;
    ChoiceBox* m_first = nullptr;
    ChoiceBox* m_second = nullptr;
    PersonNote* m_firstStands = nullptr;
    PersonNote* m_secondStands = nullptr;
    QLineEdit* m_note = nullptr;
    QLabel* m_led = nullptr; // who began it, where another is named
    QLabel* m_apart = nullptr;
    QLabel* m_problem = nullptr;
    QPushButton* m_close = nullptr;
};

} // namespace rig
