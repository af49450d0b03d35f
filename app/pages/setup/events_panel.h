#pragma once

#include "app/pages/setup/setup_panel.h"

#include <map>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace rig {

class ChoiceBox;
class DayEdit;
class Form;
class RowList;

// What was done to the airframe or to one coupling, newest first.
class EventsPanel : public SetUpPanel
{
    Q_OBJECT

public:
    explicit EventsPanel(SetUpPresenter& presenter, QWidget* parent = nullptr);

    void display(const SetUpView& view) override;
    void setLook(const Look& look) override;
    bool hasUnsaved() const override;
    void focusFirst() override;

private:
    void makeList();
    void makeForm();
    void show(bool form);
    void open(const std::optional<EventEntry>& typed);
    void fillCouplings(const SetUpView& view);
    void remindOfFitting();
    void save();
    EventEntry entry() const;
    void setEntry(const EventEntry& entry);

    std::optional<AirframeId> m_airframe;
    Day m_today;
    bool m_isOpen = false;
    EventEntry m_saved;
    std::map<AirframeId, EventEntry> m_typed; // left open while another airframe was looked at

    QWidget* m_list = nullptr;
    QLabel* m_none = nullptr;
    RowList* m_rows = nullptr;
    QPushButton* m_add = nullptr;
    Form* m_form = nullptr;
    QComboBox* m_kind = nullptr;
    DayEdit* m_day = nullptr;
    ChoiceBox* m_where = nullptr;
    QLineEdit* m_note = nullptr;
    QLabel* m_fittingToo = nullptr;
};

} // namespace rig
