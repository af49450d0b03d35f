#pragma once

#include "app/pages/setup/form.h"
#include "app/pages/setup/setup_panel.h"
#include "app/widgets/row_list.h"

#include <functional>

class QLabel;
class QPushButton;

namespace rig {

class Prompts;

// A part that is a list of things and forms for them, of which one at most stands in place of the list. What
// a button does is done to the thing that was chosen when it was pressed.
class ListPanel : public SetUpPanel
{
public:
    void setLook(const Look& look) override;
    bool hasUnsaved() const override { return m_form && m_form->hasUnsaved(); }
    bool hasTyped() const override;
    void focusFirst() override;

protected:
    struct Row
    {
        IdBytes id;
        QString name;
        bool inUse = true;
        RowText text;
    };

    struct ListText
    {
        const char* rowName; // the rows are named rowName0, rowName1, ...
        QString title;
        QString none; // while there is no row
    };

    ListPanel(SetUpPresenter& presenter, const PartText& part, const ListText& list);

    using Pressed = std::function<void()>;
    QPushButton* button(const char* name, const QString& text, Pressed pressed);
    // The same with the row that is chosen; hidden while there is none.
    QPushButton* buttonFor(const char* name, const QString& text, std::function<void(const Row&)> pressed);
    // One line of them below the list, or above it.
    void addButtons(const std::vector<QPushButton*>& buttons, bool above = false);
    void addBelow(QWidget* widget);
    // Where the keys begin: while the list is empty, or always.
    void beginAt(QPushButton* button, bool always);
    // Says of the chosen row whether it is to be taken out of use or put back.
    void setUseButton(QPushButton* button, const QString& takeOut, const QString& putBack);
    void onOpened(std::function<void(const Row&)> opened) { m_opened = std::move(opened); }
    void addForm(Form* form, Pressed save);

    void show(Form* form); // null: the list
    bool isListShown() const { return !m_form; }
    void showRows(std::vector<Row> rows);
    const Row* chosen() const; // null while there is none
    void choose(const IdBytes& id);
    RowList* rows() { return m_rows; }
    virtual void rowChosen();

    // What became of a save: problems beside their fields, or the list with the thing chosen.
    void finish(Form* form, const Result<Saved>& result);

    // True when another airframe is looked at than before; what is typed is put aside, until arrive().
    bool leaveFor(const std::optional<Airframe>& airframe);
    void arrive();
    AirframeId airframe() const { return m_airframe.value_or(AirframeId{}); }

private:
    std::optional<AirframeId> m_airframe;
    std::vector<Row> m_shown;
    std::vector<Form*> m_forms;
    Form* m_form = nullptr; // that stands in place of the list
    std::function<void(const Row&)> m_opened;
    QWidget* m_list = nullptr;
    QLabel* m_none = nullptr;
    RowList* m_rows = nullptr;
    std::vector<QPushButton*> m_forChosen;
    QPushButton* m_first = nullptr;
    bool m_alwaysFirst = false;
    QPushButton* m_use = nullptr;
    QString m_takeOut;
    QString m_putBack;
};

// A list in an order that the owner chooses, of things that may be taken out of use.
class OrderPanel : public ListPanel
{
protected:
    // `takeOutQuestion` is asked before a thing is taken out of use.
    OrderPanel(SetUpPresenter& presenter, Prompts& prompts, const PartText& part, const ListText& list,
               const QString& takeOutQuestion);

    struct Buttons
    {
        QPushButton* up;
        QPushButton* down;
        QPushButton* use;
    };
    Buttons makeOrderButtons(const char* up, const char* down, const char* use);

    // Its number and name, and whether what the part asks for is there; without a mark once out of use.
    static RowText orderedText(const QString& name, int number, bool inUse, bool isDone);

    virtual Outcome moveThing(const IdBytes& thing, int by) = 0;
    virtual Outcome setThingInUse(const IdBytes& thing, bool inUse) = 0;

    void keyPressEvent(QKeyEvent* event) override;

private:
    void move(const Row& row, int by);
    void changeUse(const Row& row);

    Prompts& m_prompts;
    QString m_takeOutQuestion;
};

} // namespace rig
