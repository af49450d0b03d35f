#pragma once

#include "app/pages/aside_page.h"
#include "app/widgets/form_field.h"
#include "core/store/records.h"

class QLabel;
class QPlainTextEdit;
class QVBoxLayout;

namespace rig {

class ChoiceBox;
class RowList;
class WrapLayout;

// What was decided apart on two laptops: both sides beside each other, and a named person who says which
// holds. Of the whole file, whichever airframe is in hand.
class ConflictsPage : public AsidePage
{
    Q_OBJECT

public:
    explicit ConflictsPage(Records& records, QWidget* parent = nullptr); // `records` outlives it

    void showAirframe(std::optional<AirframeId> airframe) override;
    void setLook(const Look& look) override;
    void catchUp() override { refresh(); }
    QString leftUndone() const override;

protected:
    void focusInEvent(QFocusEvent* event) override;

private:
    QWidget* makeList();
    QWidget* makePanel();
    void addSides(QVBoxLayout* layout);
    void addForm(QVBoxLayout* layout);
    void refresh();
    void display(int row);
    bool isKeptBack(const Conflict& conflict) const;
    void decideAs(Holds holds);

    Records& m_records;
    std::optional<AirframeId> m_airframe;
    std::vector<ToldConflict> m_told;
    int m_shown = -1;

    RowList* m_rows = nullptr;
    QLabel* m_count = nullptr;
    QLabel* m_result = nullptr;
    QWidget* m_body = nullptr;
    QLabel* m_title = nullptr;
    QLabel* m_until = nullptr;
    QLabel* m_first = nullptr;
    QLabel* m_second = nullptr;
    ChoiceBox* m_person = nullptr;
    QPlainTextEdit* m_reason = nullptr;
    FormField m_personField;
    FormField m_reasonField;
    QLabel* m_rename = nullptr;
    std::vector<std::pair<Holds, class QPushButton*>> m_choices;
};

} // namespace rig
