#pragma once

#include "app/pages/rigged_today/rigged_today_view.h"
#include "app/theme/theme.h"

#include <QWidget>

#include <map>

class QCheckBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QRadioButton;
class QVBoxLayout;

namespace rig {

class ChoiceBox;
class PersonNote;

// What stands at the head of a sheet that was filled in by hand.
struct PaperHead
{
    Moment begins;
    PersonId enteredBy;
    PersonId first;
    PersonId second;
    RecordOrigin origin = RecordOrigin::Rigging;
    bool isAnother = false; // another rigging stands on that day, and somebody says that this is not the same
};

// Before a record is typed in from paper: when it was, who did it, who types. Nobody and no day is filled in.
class PaperStart : public QWidget
{
    Q_OBJECT

public:
    explicit PaperStart(QWidget* parent = nullptr);

    void display(const RiggedTodayView& view);
    void setLook(const Look& look);
    void setStandings(const PersonStandings& people); // on the day that stands there
    void clear();
    void focusFirst();
    bool isBegun() const; // something is typed or chosen
    // Why it cannot begin like this. `asksWhetherAnother`: it can, once somebody says that it is another
    // rigging.
    void refuse(const QString& sentence, bool asksWhetherAnother);
    // A key pressed anywhere on the page. False when it means nothing here.
    bool takeKey(QKeyEvent* event);

signals:
    void beginAsked(const rig::PaperHead& head);
    void backAsked();
    void standingsAsked(rig::Day day); // answered at once by setStandings()

private:
    struct LineText
    {
        const char* name;
        QString label;
        QString hint;
    };

    // What stands below the line may be added to the layout.
    static QVBoxLayout* addRow(QFormLayout* form, QLineEdit* line, const LineText& text);
    ChoiceBox* addPerson(QFormLayout* form, const char* name, const QString& label);
    void begin();
    std::optional<Moment> momentTyped();
    void askStandings();
    void showStandings();

    PersonStandings m_people;
    std::map<ChoiceBox*, PersonNote*> m_notes;
    std::optional<AirframeId> m_airframe;
    QLineEdit* m_day = nullptr;
    QLineEdit* m_time = nullptr;
    ChoiceBox* m_first = nullptr;
    ChoiceBox* m_second = nullptr;
    ChoiceBox* m_typist = nullptr;
    QRadioButton* m_apart = nullptr;
    QRadioButton* m_stood = nullptr;
    QCheckBox* m_another = nullptr;
    QLabel* m_refused = nullptr;
};

} // namespace rig
