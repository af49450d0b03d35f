#pragma once

#include "app/pages/setup/setup_entries.h"

#include <QString>
#include <QWidget>

#include <optional>
#include <vector>

class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;
class QPlainTextEdit;
class QPushButton;

namespace rig {

class ButtonFlow;
class DayEdit;

// One field as a form lists it.
struct FieldText
{
    const char* name; // objectName of the editor; its problem label is name + "Problem"
    QString label;    // with the mnemonic
    QString hint;
    std::optional<Field> field; // where a refusal of it is said
};

// A title, fields in two columns, a save button. Enter saves, Esc closes where that is possible; what was
// refused is said beside its field and nothing typed is touched.
class Form : public QWidget
{
    Q_OBJECT

public:
    enum class Width { Half, Whole };

    Form(const QString& saveText, bool canBeClosed, QWidget* parent = nullptr);

    void setTitle(const QString& title);
    void setExplanation(const QString& sentence, const char* kind = "soft");

    QLineEdit* addLine(const FieldText& text, Width width = Width::Half);
    QPlainTextEdit* addText(const FieldText& text);
    QComboBox* addChoice(const FieldText& text, Width width = Width::Half);
    DayEdit* addDay(const FieldText& text, Width width = Width::Half);
    // An editor of the caller's making; the caller says edited().
    void addField(const FieldText& text, QWidget* editor, Width width = Width::Half)
    {
        add(text, editor, editor, width);
    }
    // A widget with no label of its own, over the whole width.
    void addWidget(QWidget* widget);
    // Beside the save button.
    void addButton(QPushButton* button);
    // The label, hint and problem around an editor come and go with it.
    void setFieldVisible(QWidget* editor, bool visible);
    void setHint(QWidget* editor, const QString& hint);

    void showProblems(const std::vector<FieldProblem>& problems);
    void showStatus(const QString& sentence);
    void focusFirst();

    // What is typed is not in the file.
    virtual bool hasUnsaved() const { return false; }
    // What is typed and not saved is kept while another airframe is looked at, with what it belongs to; true
    // when something was kept for that one and stands here again.
    virtual void putAside(AirframeId) {}
    virtual bool takeUp(AirframeId) { return false; }
    virtual bool hasAside() const { return false; } // of any airframe

signals:
    void saveAsked();
    void closeAsked();
    void edited();

protected:
    QString title() const;
    void keyPressEvent(QKeyEvent* event) override;

private:
    struct Place
    {
        QWidget* around = nullptr;
        QWidget* editor = nullptr;
        QWidget* named = nullptr; // the editor's line, where focus and names are
        QLabel* hint = nullptr;
        QLabel* problem = nullptr;
        std::optional<Field> field;
    };

    void add(const FieldText& text, QWidget* editor, QWidget* named, Width width);
    void place(QWidget* widget, Width width);
    bool isRefused();
    void goTo(const Place& refused);
    void askToSave();

    QLabel* m_title = nullptr;
    QLabel* m_explanation = nullptr;
    QGridLayout* m_grid = nullptr;
    ButtonFlow* m_buttons = nullptr;
    QPushButton* m_save = nullptr;
    QLabel* m_status = nullptr;
    std::vector<Place> m_places;
    int m_row = 0;
    int m_column = 0;
    bool m_canBeClosed = false;
};

} // namespace rig
