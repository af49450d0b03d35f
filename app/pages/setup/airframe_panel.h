#pragma once

#include "app/pages/setup/setup_panel.h"

#include <map>

class QPushButton;

namespace rig {

class AirframeForm;

// The chosen airframe, or a further one.
class AirframePanel : public SetUpPanel
{
    Q_OBJECT

public:
    explicit AirframePanel(SetUpPresenter& presenter, QWidget* parent = nullptr);

    void display(const SetUpView& view) override;
    bool hasUnsaved() const override;
    void focusFirst() override;

signals:
    void airframeAdded(rig::AirframeId airframe);

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void save();
    void enterFurther(bool further);
    void stash();
    void showEntry();
    // The key of what stands in the form; null for an airframe that is not saved yet.
    AirframeId shown() const;

    AirframeForm* m_form = nullptr;
    QPushButton* m_further = nullptr;
    QPushButton* m_back = nullptr;
    std::optional<AirframeId> m_airframe;
    AirframeEntry m_chosen; // of m_airframe, as it is in the file
    bool m_isFurther = false;
    AirframeEntry m_saved; // what the form would show without typing
    // Typed and not saved while another airframe is looked at.
    std::map<AirframeId, AirframeEntry> m_typed;
};

} // namespace rig
